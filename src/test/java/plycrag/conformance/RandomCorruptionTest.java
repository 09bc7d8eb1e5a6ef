package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Envelope;
import plycrag.app.CorruptedPrograms;

/**
 * Words changed, lines dropped, swapped and repeated at random in routed, engraved and drilled
 * programs: where the self-check lets one pass, it takes the same out of the sheet as the original,
 * by LinuxCNC's interpreter and a grid of heights that know nothing of that check.
 */
@Tag("conformance")
class RandomCorruptionTest {
  private static final int TIMES = 1000;
  private static final Pattern NUMBER = Pattern.compile("[A-Z](-?[0-9]+\\.?[0-9]*)");
  private static final Pattern TOOL =
      Pattern.compile("\\(TOOL T\\d+ ([A-Z -]+) DIAMETER ([0-9.]+)");
  private static final Pattern THICK = Pattern.compile("\\(STOCK .* ([0-9.]+) THICK\\)");

  /** Of a line that an engraver draws, mm. */
  private static final double LINE = 0.5;

  /** What is looked at beyond all that is cut: tools, and what a changed word adds, mm. */
  private static final double BEYOND = 8;

  @TempDir private Path folder;

  /** A program with what it makes. */
  private record Original(String path, String text, Envelope area, CutVolume made) {}

  @Test
  void whatChangesWhatIsMadeIsCaught() {
    Map<String, Original> originals =
        CorruptedPrograms.paths().stream()
            .collect(Collectors.toMap(path -> path, path -> original(path)));
    List<String> paths = CorruptedPrograms.paths();
    Random random = new Random(Integer.getInteger("seed", 23));
    List<String> missed = new ArrayList<>();
    int passed = 0;
    for (int time = 0; time < Integer.getInteger("times", TIMES); time++) {
      Original original = originals.get(paths.get(random.nextInt(paths.size())));
      String corrupted = corrupted(original.text(), random);
      if (!corrupted.equals(original.text())
          && CorruptedPrograms.passes(original.path(), corrupted)) {
        passed++;
        if (!makesTheSame(original, corrupted)) {
          missed.add(original.path() + ", " + difference(original.text(), corrupted));
        }
      }
    }
    assertThat(missed).isEmpty();
    assertThat(passed).isBetween(1, TIMES / 3);
  }

  /** The judge sees what a self-check that let all pass would miss. */
  @Test
  void theJudgeSeesDamage() {
    Original cuts = original(CorruptedPrograms.paths().get(3));
    assertThat(makesTheSame(cuts, cuts.text())).isTrue();
    assertThat(makesTheSame(cuts, cuts.text().replace("Z4. ", "Z3.8 "))).isFalse();
    assertThat(makesTheSame(cuts, cuts.text().replaceAll("Y390\\.", "Y390.6"))).isFalse();
    assertThat(makesTheSame(cuts, cuts.text().replaceFirst("G1 Z18\\.", "G0 Z17."))).isFalse();
    assertThat(makesTheSame(cuts, cuts.text().replaceFirst("M3 S\\d+", "M5"))).isFalse();
  }

  private Original original(String path) {
    String text = CorruptedPrograms.text(path);
    String moves = moves(text);
    Envelope area = CutVolume.area(moves, BEYOND);
    CutVolume made = CutVolume.of(moves, area, top(text), radius(text));
    assertThat(made.isSpoilt()).as(path).isFalse();
    return new Original(path, text, area, made);
  }

  private boolean makesTheSame(Original original, String corrupted) {
    String text = original.text();
    CutVolume made = CutVolume.of(moves(corrupted), original.area(), top(text), radius(text));
    return !made.isSpoilt() && made.leavesWhat(original.made());
  }

  private String moves(String text) {
    Path program = folder.resolve("test.ngc");
    Tools.write(program, text);
    Tools.Result result = Rs274.interpret(program);
    assertThat(result.exit()).as(result.output()).isZero();
    return result.output();
  }

  private static double top(String text) {
    return text.contains("(Z0 SPOILBOARD)") ? found(THICK, 1, text) : 0;
  }

  private static double radius(String text) {
    return text.contains("ENGRAVER") ? LINE / 2 : found(TOOL, 2, text) / 2;
  }

  private static double found(Pattern pattern, int group, String text) {
    Matcher found = pattern.matcher(text);
    assertThat(found.find()).isTrue();
    return Double.parseDouble(found.group(group));
  }

  private static String corrupted(String text, Random random) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    int at = random.nextInt(lines.size() - 1);
    switch (random.nextInt(4)) {
      case 0 -> lines.set(at, changed(lines.get(at), random));
      case 1 -> lines.remove(at);
      case 2 -> {
        int other = random.nextInt(lines.size() - 1);
        String line = lines.get(at);
        lines.set(at, lines.get(other));
        lines.set(other, line);
      }
      default -> lines.add(at, lines.get(at));
    }
    return String.join("\n", lines);
  }

  private static String changed(String line, Random random) {
    List<int[]> places = new ArrayList<>();
    Matcher number = NUMBER.matcher(line);
    while (number.find()) {
      places.add(new int[] {number.start(1), number.end(1)});
    }
    if (places.isEmpty()) {
      return line;
    }
    int[] place = places.get(random.nextInt(places.size()));
    double value = Double.parseDouble(line.substring(place[0], place[1]));
    boolean code = "GM".indexOf(line.charAt(place[0] - 1)) >= 0;
    String text = code ? String.valueOf(random.nextInt(6)) : number(value, random);
    return line.substring(0, place[0]) + text + line.substring(place[1]);
  }

  /** Another number, of a sign, a digit or a place of the point. */
  private static String number(double value, Random random) {
    double other =
        switch (random.nextInt(value == 0 ? 1 : 4)) {
          case 0 -> value + 0.01 * (1 + random.nextInt(100));
          case 1 -> -value;
          case 2 -> value * 10;
          default -> value / 10;
        };
    return String.valueOf(Math.round(other * 1000) / 1000.0);
  }

  private static String difference(String text, String corrupted) {
    List<String> before = List.of(text.split("\n", -1));
    List<String> after = List.of(corrupted.split("\n", -1));
    int at = 0;
    while (at < Math.min(before.size(), after.size()) && before.get(at).equals(after.get(at))) {
      at++;
    }
    return "line " + (at + 1) + ": " + before.get(at) + " | " + after.get(at);
  }
}
