package plycrag.layout.frame;

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

class MemberRoleTest {
  /** Findings know no members; what is equal but for their marks is told once all the same. */
  @ParameterizedTest
  @EnumSource(MemberRole.class)
  void findingsThatDifferInAMarkAreEqual(MemberRole role) {
    List<Finding> findings =
        Stream.of(1, 27).map(number -> "mark " + role.letters() + number).map(this::told).toList();
    assertThat(FindingGroup.of(findings)).hasSize(1);
    assertThat(FindingGroup.of(List.of(told("mark it"), told("mark them")))).hasSize(2);
  }

  private Finding told(String sentence) {
    return new Finding(
        "saw-reach", Severity.NOTE, new Place.WholeWall(), "", "", Optional.empty(), sentence, "");
  }
}
