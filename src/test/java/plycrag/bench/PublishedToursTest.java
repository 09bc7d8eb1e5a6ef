package plycrag.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Tours of instances with published optima: G. Reinelt, "TSPLIB – A Traveling Salesman Problem
 * Library", ORSA Journal on Computing 3(4), 1991, files and optimal lengths.
 */
class PublishedToursTest {
  private static final Path FOLDER = Path.of("src/test/resources/benchmarks/tsp");

  @ParameterizedTest
  @CsvSource({"pr76.tsp, 108159", "d198.tsp, 15780"})
  void isHardlyLongerThanTheShortest(String file, long optimum) throws IOException {
    TspInstance instance = TspInstance.read(FOLDER.resolve(file));
    int[] order = instance.solve();
    assertThat(instance.isTour(order)).isTrue();
    assertThat(instance.length(order)).isBetween(optimum, Math.round(1.02 * optimum));
    assertThat(instance.solve()).isEqualTo(order);
  }

  @Test
  void readsExponentsAndKeysWithoutSpaces(@TempDir Path folder) throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("a.tsp"),
            """
            NAME: a
            DIMENSION: 3
            EDGE_WEIGHT_TYPE: EUC_2D
            NODE_COORD_SECTION
             1 0.0e+00 0
            2 3.0e+00 0
            3 3 4.00000E+00
            """);
    TspInstance instance = TspInstance.read(file);
    assertThat(instance.length(instance.solve())).isEqualTo(3 + 4 + 5);
  }

  @ParameterizedTest
  @CsvSource({
    "EUC_2D, 2, '1 0 0', 1 places",
    "EUC_2D, 1, '1 0 x', not a place",
    "EUC_2D, 1, '1 0', not a place",
    "GEO, 1, '1 0 0', not EUC_2D",
  })
  void refusesWhatIsNoSuchInstance(
      String type, int dimension, String place, String message, @TempDir Path folder)
      throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("a.tsp"),
            "DIMENSION : %d\nEDGE_WEIGHT_TYPE : %s\nNODE_COORD_SECTION\n%s\nEOF\n"
                .formatted(dimension, type, place));
    assertThatThrownBy(() -> TspInstance.read(file))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(message);
  }
}
