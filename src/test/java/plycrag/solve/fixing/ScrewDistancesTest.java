package plycrag.solve.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** EN 1995-1-1:2004 Table 8.2, density of at most 420 kg/m³, worked by hand. */
class ScrewDistancesTest {

  /** Diameter, predrilled; then a1, a2, a3,t with the grain and a4 of an unloaded edge. */
  @ParameterizedTest
  @CsvSource({
    "4.5, false, 45, 22.5, 67.5, 22.5",
    "4.5, true, 22.5, 13.5, 54, 13.5",
    "5, false, 60, 25, 75, 25",
    "5, true, 25, 15, 60, 15",
    "6, true, 30, 18, 72, 18"
  })
  void withTheGrain(
      double diameter, boolean predrilled, double a1, double a2, double a3, double a4) {
    ScrewDistances distances = new ScrewDistances(diameter, predrilled);
    assertThat(distances.alongGrain(1)).isCloseTo(a1, within(1e-9));
    assertThat(distances.acrossGrain(0)).isCloseTo(a2, within(1e-9));
    assertThat(distances.loadedEnd(1)).isCloseTo(a3, within(1e-9));
    assertThat(distances.loadedEdge(0)).isCloseTo(a4, within(1e-9));
  }

  /** Diameter, predrilled; then a1, a2, a3 and a4,t where the force lies across the grain. */
  @ParameterizedTest
  @CsvSource({
    "4.5, false, 22.5, 22.5, 45, 31.5",
    "4.5, true, 18, 18, 31.5, 22.5",
    "5, false, 25, 25, 50, 50",
    "5, true, 20, 20, 35, 35"
  })
  void acrossTheGrain(
      double diameter, boolean predrilled, double a1, double a2, double a3, double a4) {
    ScrewDistances distances = new ScrewDistances(diameter, predrilled);
    assertThat(distances.alongGrain(0)).isCloseTo(a1, within(1e-9));
    assertThat(distances.acrossGrain(1)).isCloseTo(a2, within(1e-9));
    assertThat(distances.loadedEnd(0)).isCloseTo(a3, within(1e-9));
    assertThat(distances.loadedEdge(1)).isCloseTo(a4, within(1e-9));
  }

  /** Steel on timber: 0.7 of the distances between screws (8.3.1.4). */
  @Test
  void steelHasItsScrewsCloser() {
    double apart = new ScrewDistances(5, true).alongGrain(1);
    assertThat(ScrewDistances.STEEL_ON_TIMBER * apart).isCloseTo(17.5, within(1e-9));
  }
}
