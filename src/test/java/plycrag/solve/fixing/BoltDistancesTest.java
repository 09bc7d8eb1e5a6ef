package plycrag.solve.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against the table of bolts by EN 1995-1-1 Table 8.4 that the public MassTimber wiki gives
 * (docs/verbindingen/randafstanden.md): a1 and a3,t along the grain, a4,t across it.
 */
class BoltDistancesTest {
  private static final double TINY = 1e-9;

  @ParameterizedTest
  @CsvSource({
    "8, 40, 32, 80, 32, 24",
    "12, 60, 48, 84, 48, 36",
    "16, 80, 64, 112, 64, 48",
    "20, 100, 80, 140, 80, 60",
    "24, 120, 96, 168, 96, 72"
  })
  void areThoseOfThePublishedTable(
      double diameter, double along, double across, double end, double loaded, double unloaded) {
    BoltDistances distances = new BoltDistances(diameter);
    assertThat(distances.alongGrain(1)).isCloseTo(along, within(TINY));
    assertThat(distances.acrossGrain(0)).isCloseTo(across, within(TINY));
    assertThat(distances.loadedEnd(1)).isCloseTo(end, within(TINY));
    assertThat(distances.loadedEdge(1)).isCloseTo(loaded, within(TINY));
    assertThat(distances.loadedEdge(0)).isCloseTo(unloaded, within(TINY));
  }
}
