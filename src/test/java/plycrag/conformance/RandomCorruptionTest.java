package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.app.CorruptedPrograms;

/**
 * Words changed, lines dropped, swapped and repeated at random in routed and drilled programs:
 * where the self-check lets one pass, LinuxCNC's interpreter must make the same of it as of the
 * original.
 */
@Tag("conformance")
class RandomCorruptionTest {
  private static final int TIMES = 1000;
  private static final Pattern NUMBER = Pattern.compile("[A-Z](-?[0-9]+\\.?[0-9]*)");
  private static final Pattern MADE =
      Pattern.compile("(STRAIGHT_FEED|STRAIGHT_TRAVERSE|ARC_FEED)\\(([^)]*)\\)");

  @TempDir private Path folder;

  @Test
  void whatChangesWhatIsMadeIsCaught() {
    Random random = new Random(23);
    List<String> paths = CorruptedPrograms.paths();
    int passed = 0;
    for (int time = 0; time < TIMES; time++) {
      String path = paths.get(random.nextInt(paths.size()));
      String text = CorruptedPrograms.text(path);
      String corrupted = corrupted(text, random);
      if (!corrupted.equals(text) && CorruptedPrograms.passes(path, corrupted)) {
        passed++;
        assertThat(made(corrupted)).as(difference(text, corrupted)).isEqualTo(made(text));
      }
    }
    assertThat(passed).isLessThan(TIMES / 4);
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
    double other =
        switch (random.nextInt(4)) {
          case 0 -> -value;
          case 1 -> value + 0.01 * (1 + random.nextInt(100));
          case 2 -> value * 10;
          default -> Math.rint(value * 100) / 1000;
        };
    String text = String.valueOf(Math.round(other * 1000) / 1000.0);
    return line.substring(0, place[0]) + text + line.substring(place[1]);
  }

  /** The moves that cut, in order, each once. */
  private List<String> made(String text) {
    Path program = folder.resolve("test.ngc");
    Tools.write(program, text);
    Tools.Result result = Rs274.interpret(program);
    assertThat(result.exit()).as(result.output()).isZero();
    List<String> made = new ArrayList<>();
    String at = "";
    Matcher moves = MADE.matcher(result.output());
    while (moves.find()) {
      String to = moves.group(2);
      boolean cuts = !moves.group(1).equals("STRAIGHT_TRAVERSE");
      if (cuts && !to.equals(at)) {
        made.add(at + " -> " + to);
      }
      at = to;
    }
    return made;
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
