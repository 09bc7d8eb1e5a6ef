package plycrag.proof.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import plycrag.HoleList;
import plycrag.TestFiles;

/**
 * A published program, damaged at random. Whatever the self-check lets pass must do the same work,
 * in the opinion of a controller that shares nothing with it.
 */
class DamagedProgramTest {
  private static final Path FOLDER = Path.of("out-samples/cox-slab");
  private static final String NAME = "sheet-S3-front-t01.ngc";
  private static final double CLEARANCE = 23;
  private static final String SIGNS = "0123456789.-+ ()GMXYZFSPN%;/[]#abc\u00e9\n";

  private final String text = TestFiles.read(FOLDER.resolve("cnc").resolve(NAME));
  private final List<Expected.Hole> holes =
      HoleList.of(FOLDER).on("S3", "front").stream()
          .map(row -> new Expected.Hole(row.mark(), row.x(), row.y(), row.diameter(), -0.5))
          .toList();

  /** What the sample's parameters say: 18 mm, zero on the spoilboard, 0.5 mm below, 5 and 25 up. */
  private List<Fault> faults(String program) {
    Bench bench =
        new Bench(
            new Heights(new Heights.Faces(18, 0), new Heights.Travel(-0.5, CLEARANCE, 43)),
            new Envelope(0, 1220, 0, 2440),
            List.of(),
            3,
            "Z0 SPOILBOARD");
    Cutter drill = new Cutter(1, 12, false, 4000, new Cutter.Feeds(600, 600));
    return new SelfCheck(Dialects.PLAINEST, bench)
        .faults(
            "sheet S3",
            new Expected(holes, List.of(), List.of(), new Envelope()),
            List.of(new Program(NAME, program, List.of(drill))));
  }

  @Test
  void thePublishedProgramPasses() {
    assertThat(faults(text)).isEmpty();
    assertThat(PlainRouter.play(text, CLEARANCE).odd()).isFalse();
    assertThat(PlainRouter.play(text, CLEARANCE).holes()).hasSize(holes.size());
  }

  @Property(tries = 2000)
  void whatPassesDoesTheSameWork(@ForAll long seed) {
    String damaged = damaged(new Random(seed));
    if (!damaged.equals(text) && faults(damaged).isEmpty()) {
      assertThat(PlainRouter.play(damaged, CLEARANCE))
          .as(() -> difference(damaged))
          .isEqualTo(PlainRouter.play(text, CLEARANCE));
    }
  }

  /** Otherwise the property above would hold of a check that lets everything pass or nothing. */
  @Test
  void mostDamageIsFoundAndHarmlessDamagePasses() {
    Random random = new Random(1);
    int found = 0;
    for (int at = 0; at < 1000; at++) {
      found += faults(damaged(random)).isEmpty() ? 0 : 1;
    }
    assertThat(found).isBetween(700, 990);
    assertThat(faults(text.replace("COX", "BOW"))).isEmpty();
    assertThat(faults(text.replace("G0 Z23.\n", "G0 Z23.5\n"))).isEmpty();
    assertThat(faults(text.replace(" F600.", "").replaceFirst("G1 Z-0.5", "G1 Z-0.5 F600.")))
        .isEmpty();
  }

  /** Any other number for a place, a depth, a feed or a speed makes another hole. */
  @Property(tries = 500)
  void everyChangedFigureOfACutIsFound(
      @ForAll @IntRange(min = 0) int place, @ForAll @IntRange(min = 1, max = 9) int step) {
    List<Integer> figures = new ArrayList<>();
    int at = 0;
    for (String line : text.split("\n", -1)) {
      boolean cut = line.startsWith("G1") || line.startsWith("G0 X") || line.startsWith("M3");
      for (int column = 3; cut && column < line.length(); column++) {
        if (Character.isDigit(line.charAt(column))) {
          figures.add(at + column);
        }
      }
      at += line.length() + 1;
    }
    int where = figures.get(place % figures.size());
    char other = (char) ('0' + (text.charAt(where) - '0' + step) % 10);
    String damaged = text.substring(0, where) + other + text.substring(where + 1);
    assertThat(faults(damaged)).as(() -> difference(damaged)).isNotEmpty();
  }

  private String damaged(Random random) {
    List<String> lines = new ArrayList<>(List.of(text.split("(?<=\n)", -1)));
    int at = random.nextInt(lines.size() - 1);
    int other = random.nextInt(lines.size() - 1);
    switch (random.nextInt(6)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(other, lines.get(at));
      case 2 -> lines.set(other, lines.set(at, lines.get(other)));
      default -> lines.set(at, damaged(lines.get(at), random));
    }
    return String.join("", lines);
  }

  private static String damaged(String line, Random random) {
    int at = random.nextInt(line.length());
    String sign = SIGNS.substring(random.nextInt(SIGNS.length())).substring(0, 1);
    return switch (random.nextInt(4)) {
      case 0 -> line.substring(0, at) + line.substring(at + 1);
      case 1 -> line.substring(0, at) + sign + line.substring(at);
      case 2 -> line.substring(0, at) + line.charAt(at) + line.substring(at);
      default -> line.substring(0, at) + sign + line.substring(at + 1);
    };
  }

  private String difference(String damaged) {
    int at = 0;
    while (at < damaged.length() && damaged.charAt(at) == text.charAt(at)) {
      at++;
    }
    return "..." + damaged.substring(Math.max(0, at - 30), Math.min(damaged.length(), at + 30));
  }
}
