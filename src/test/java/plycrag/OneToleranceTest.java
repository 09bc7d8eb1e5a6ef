package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Holds that what counts as nothing is said in one place. */
class OneToleranceTest {
  /** A number so small in the code is a tolerance unless it is told here what else. */
  private static final double SMALL = 0.1;

  /** Who has small numbers for another reason, by the name of the class. */
  private static final Map<String, String> OTHERWISE =
      Map.ofEntries(
          Map.entry("Tolerance", "is the place"),
          Map.entry("Tape", "reads numbers of steps, and units know no geometry"),
          Map.entry("SoldSize", "how near sizes are that shops tell apart"),
          Map.entry("Gauge", "a published formula, and what has a number by it"),
          Map.entry("StockSheetTable", "the least price that a file may give"),
          Map.entry("Rounding", "linear programs' own accuracy, in no length"),
          Map.entry("FrameAccuracy", "parts of forces and motions, in no length"),
          Map.entry("SelfWeight", "what part of a weight hardware is"),
          Map.entry("StructureTable", "the least force that a file may give"),
          Map.entry("SparseAccuracy", "parts of a matrix's entries, in no length"),
          Map.entry("RuinAndRebuild", "how far a search goes downhill"),
          Map.entry("Shapes", "how many sides a circle's polygon gets"),
          Map.entry("Descent", "how far programs round the ends of a way"),
          Map.entry("Laps", "how round a hole is cut by short moves"),
          Map.entry("Scene", "colours, from 0 to 1"),
          Map.entry("SheetsSaved", "what part of its size nobody misses of a facet"),
          Map.entry("Accuracy", "what programs are promised to keep"),
          Map.entry("Coincidence", "what drawings promise; formats know no geometry"),
          Map.entry("DxfOverlaps", "what drawings promise, apart from who writes them"),
          Map.entry("PdfWordPlaces", "a reader's single precision, points"),
          Map.entry("TextStyle", "how far letters reach, of their size"));

  /** Remarks and texts. */
  private static final Pattern WORDS =
      Pattern.compile(
          "/\\*.*?\\*/|//[^\n]*|\"\"\".*?\"\"\"|\"[^\"\\\\\n]*+(?:\\\\.[^\"\\\\\n]*+)*+\"|'\\\\?.'",
          Pattern.DOTALL);

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\w.])(?:[0-9_]+\\.[0-9_]*|\\.[0-9_]+|[0-9_]+(?=[eE]-))(?:[eE][-+]?[0-9]+)?",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern NAMED =
      Pattern.compile(
          "static final double (?:\\w+_)?(?:TOLERANCE|EPSILON|EPS|SLACK|TINY|ROUNDING) = [^;]*[0-9]");

  private static boolean hasSmallNumber(String code) {
    Matcher number = NUMBER.matcher(WORDS.matcher(code).replaceAll(" "));
    while (number.find()) {
      double value = Double.parseDouble(number.group().replace("_", ""));
      if (value > 0 && value < SMALL) {
        return true;
      }
    }
    return false;
  }

  private static String name(Path file) {
    return file.getFileName().toString().replace(".java", "");
  }

  @Test
  void nobodyElseHasASmallNumber() {
    List<Path> files = TestFiles.list(Path.of("src/main/java"), ".java");
    assertThat(
            files.stream()
                .filter(file -> hasSmallNumber(TestFiles.read(file)))
                .map(OneToleranceTest::name))
        .as("classes with a small number: name a quantity of geometry.Tolerance, or say here why")
        .containsExactlyInAnyOrderElementsOf(OTHERWISE.keySet());
  }

  /** Nor one called so that is not as small: a length of the trade has a name of its own. */
  @Test
  void nobodyElseNamesOne() {
    assertThat(
            TestFiles.list(Path.of("src/main/java"), ".java").stream()
                .filter(file -> NAMED.matcher(TestFiles.read(file)).find())
                .map(OneToleranceTest::name))
        .containsExactlyInAnyOrder("JigPlan", "PdfWordPlaces", "UncutStretch");
  }

  @Test
  void smallNumbersAreFoundHoweverTheyAreWritten() {
    assertThat(
            List.of("a < 1e-6", "a < 1E-9;", "b = .05;", "c = 0.001;", "d = 0.000_1;", "e(2.5e-3)"))
        .allMatch(OneToleranceTest::hasSmallNumber);
    assertThat(
            List.of(
                "a < 0.1", "0.5 + 1e9", "// 0.01", "/** 0.01 mm. */", "\"0.05\"", "x0.01", "0.0"))
        .noneMatch(OneToleranceTest::hasSmallNumber);
  }
}
