package plycrag.files.ngc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reader must refuse what a careful person would; else it proves nothing of the writer. */
class NgcReaderTest {
  private static final String GOOD =
      """
      (Z0 SHEET TOP)
      G21 G90 G94 G17 G54
      G0 Z20.
      M3 S18000
      G4 P3
      G0 X10. Y20.5
      G1 Z-18. F600.
      G0 Z20.
      M5
      M2
      """;

  @Test
  void readsWhatIsDrilled() {
    NgcReader reader = NgcReader.read(GOOD);
    assertThat(reader.holes()).containsExactly(new NgcReader.Hole(10, 20.5, -18));
    assertThat(reader.comments()).containsExactly("Z0 SHEET TOP");
    assertThat(reader.travelHeights()).containsExactly(20.0);
    assertThat(reader.speed()).isEqualTo(18_000);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G0 Z20.|G0 X0. Y0.|across before Z is clear",
        "G0 Z20.|G0 X0. Y0. Z20.|a rapid is Z or X and Y",
        "G4 P3|(NO WAIT)|not at speed",
        "M3 S18000|(NO SPINDLE)|not at speed",
        "G1 Z-18. F600.|G1 Z-18.|a plunge is Z and F",
        "G1 Z-18. F600.|G1 Z-18.0001 F600.|not a word",
        "G1 Z-18. F600.|G81 Z-18. F600.|other controllers",
        "G1 Z-18. F600.|G1 Z-1e1 F600.|not a word",
        "G0 X10. Y20.5|G0 X-0. Y20.5|not a word",
        "G0 X10. Y20.5|G0 X10,5 Y20.5|not a word",
        "G21 G90|G90|no modes",
        "M2|(NO END)|no M2",
        "M5|(STILL TURNING)|ends while turning",
        "(Z0 SHEET TOP)|(Z0 (SHEET) TOP)|not one comment",
      })
  void refuses(String good, String bad, String fault) {
    assertThat(GOOD).contains(good);
    assertThatThrownBy(() -> NgcReader.read(GOOD.replace(good, bad))).hasMessageContaining(fault);
  }

  @Test
  void refusesAcrossWithoutRetracting() {
    String bad = GOOD.replace("F600.\nG0 Z20.", "F600.\nG0 X1. Y1.\nG0 Z20.");
    assertThatThrownBy(() -> NgcReader.read(bad)).hasMessageContaining("across before Z is clear");
  }
}
