package plycrag.layout.joints;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plycrag.finding.Finding;
import plycrag.finding.FindingGroup;
import plycrag.finding.Place;
import plycrag.finding.Severity;

class HardwareKindTest {
  /** Findings know no hardware; what is equal but for its marks is told once all the same. */
  @ParameterizedTest
  @EnumSource(Hardware.Kind.class)
  void findingsThatDifferInAMarkAreEqual(Hardware.Kind kind) {
    List<Finding> findings =
        Stream.of(1, 27).map(number -> "mark " + kind.letters() + number).map(this::told).toList();
    assertThat(FindingGroup.of(findings)).hasSize(1);
  }

  private Finding told(String sentence) {
    return new Finding(
        "saw-reach", Severity.NOTE, new Place.WholeWall(), "", "", Optional.empty(), sentence, "");
  }
}
