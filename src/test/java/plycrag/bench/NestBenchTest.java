package plycrag.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NestBenchTest {
  private static final Path FOLDER = Path.of("src/test/resources/benchmarks/sheet2d");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... arguments) {
    return new NestBench(print(out), print(err)).run(arguments);
  }

  private static PrintStream print(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }

  /**
   * Berkey and Wang 1987, Martello and Vigo 1998; the values are certain, see the folder's page.
   */
  @ParameterizedTest
  @CsvSource({
    "bwmv_c01_n020_01, 8, 7",
    "bwmv_c03_n020_04, 4, 4",
    "bwmv_c05_n020_09, 7, 6",
    "bwmv_c07_n020_01, 5, 5",
    "bwmv_c10_n020_03, 4, 4",
  })
  void takesNoMoreSheetsThanPublished(String name, int oriented, int rotated) {
    String file = FOLDER.resolve(name + ".txt").toString();
    assertThat(run(file)).isZero();
    assertThat(run("--rotate", file)).isZero();
    List<String> lines = out.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(lines.get(0)).matches(name + " 20 " + oriented + " \\d+ \\d+");
    assertThat(lines.get(1)).matches(name + " 20 " + rotated + " \\d+ \\d+");
    assertThat(lines).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "2\n10 10\n3 4", "1\n10 10\n3 x", "1\n10 10\n-3 3", "1\n9 9\n10 3"})
  void aBadFileIsOneMessage(String text, @TempDir Path folder) throws IOException {
    Path file = folder.resolve("bad.txt");
    Files.writeString(file, text);
    assertThat(run(file.toString())).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(1);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("bad.txt");
    assertThat(out.size()).isZero();
  }

  @Test
  void aMissingFileAndNoFileAreUsageFaults() {
    List<Integer> codes = new ArrayList<>();
    codes.add(run("none.txt"));
    codes.add(run());
    codes.add(run("--optima"));
    assertThat(codes).containsOnly(2);
    assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(3);
  }
}
