package plycrag.layout.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import plycrag.WallTexts;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.layout.Layout;

class JointFinderTest {

  private static Map<Joint.Kind, Long> counted(Layout layout) {
    return layout.joints().stream()
        .collect(Collectors.groupingBy(Joint::kind, Collectors.counting()));
  }

  /** Three studs between two plates: six ends, counted by hand. */
  @Test
  void everyStudEndsOnTwoPlates() {
    List<Joint> joints = Walls.laidOut(Found.BAY).joints();
    assertThat(joints.stream().map(joint -> joint.first() + " " + joint.second()))
        .containsExactlyInAnyOrder(
            "ST1 PL1", "ST1 PL2", "ST2 PL1", "ST2 PL2", "ST3 PL1", "ST3 PL2");
    assertThat(joints).allMatch(joint -> joint.kind() == Joint.Kind.END && joint.length() == 45);
    assertThat(joints.stream().map(Joint::mark))
        .containsExactly("J1", "J2", "J3", "J4", "J5", "J6");
  }

  /** Studs at both sides and two at the seam, which lie side by side over their whole 510 mm. */
  @Test
  void doubledStudsLieSideBySide() {
    Layout layout = Walls.laidOut(Found.SEAMED);
    assertThat(counted(layout))
        .containsEntry(Joint.Kind.END, 8L)
        .containsEntry(Joint.Kind.SIDE, 1L);
    assertThat(layout.joints())
        .filteredOn(joint -> joint.kind() == Joint.Kind.SIDE)
        .singleElement()
        .satisfies(
            joint -> {
              assertThat(joint.first() + " " + joint.second()).isEqualTo("ST2 ST3");
              assertThat(joint.length()).isEqualTo(510);
              assertThat(joint.place().getX()).isEqualTo(601);
            });
  }

  @Test
  void thePlatesAtAFoldMeet() {
    Layout layout =
        Walls.laidOut("[wall]\nwidth = 1200\n[[facet]]\nlength = 500\n[[facet]]\nangle = 20\n");
    assertThat(layout.facets().get(0).joints())
        .filteredOn(joint -> joint.kind() == Joint.Kind.FOLD)
        .singleElement()
        .satisfies(
            joint -> {
              assertThat(joint.first() + " " + joint.second()).isEqualTo("PL2 PL3");
              assertThat(joint.length()).isEqualTo(1200);
            });
    assertThat(layout.facets().get(1).joints()).noneMatch(one -> one.kind() == Joint.Kind.FOLD);
  }

  @Provide
  Arbitrary<String> walls() {
    return WallTexts.roomy();
  }

  /** Both ends of every stud and of every blocking are held, and no joint is told twice. */
  @Property(tries = 60)
  void noMemberHangsInTheAir(@ForAll("walls") String toml) {
    Layout layout = Walls.laidOut(toml);
    Map<String, Long> ends =
        layout.joints().stream()
            .filter(joint -> joint.kind() == Joint.Kind.END)
            .collect(Collectors.groupingBy(Joint::first, Collectors.counting()));
    for (Member member : layout.members()) {
      if (member.role() != MemberRole.PLATE) {
        assertThat(ends.getOrDefault(member.mark(), 0L))
            .as(member.mark())
            .isGreaterThanOrEqualTo(2);
      }
    }
    assertThat(layout.joints().stream().map(joint -> joint.first() + " " + joint.second()))
        .doesNotHaveDuplicates();
  }
}
