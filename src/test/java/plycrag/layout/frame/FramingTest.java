package plycrag.layout.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.layout.Layout;
import plycrag.layout.skin.Axis;

class FramingTest {

  private static List<Double> middles(Layout layout, MemberRole role) {
    return layout.members().stream()
        .filter(member -> member.role() == role)
        .map(member -> (role.isUpright() ? Axis.ACROSS : Axis.UP).middle(member.box()))
        .distinct()
        .sorted()
        .toList();
  }

  @Test
  void edgeStudsMayBeDoubled() {
    Layout layout = Walls.laidOut(Found.BAY + "edge-studs = \"doubled\"\n");
    assertThat(middles(layout, MemberRole.STUD)).containsExactly(22.5, 67.5, 600.0, 1132.5, 1177.5);
    Found.by("members-overlap", layout).isNothing();
  }

  /** Plates' middles at 22.5 and 1177.5: 1155 is divided into three of 385 by rows on the grid. */
  @Test
  void blockingKeepsItsSpacing() {
    Layout layout = Walls.laidOut(Found.BAY + "blocking-spacing = 386\n");
    assertThat(middles(layout, MemberRole.BLOCKING)).containsExactly(408.0, 793.0);
    assertThat(layout.members().stream().filter(one -> one.role() == MemberRole.BLOCKING))
        .hasSize(4);
  }

  @Property(tries = 60)
  void rowsOfBlockingStandNoFurtherApart(
      @ForAll @IntRange(min = 600, max = 4000) int length,
      @ForAll @IntRange(min = 200, max = 1500) int spacing) {
    Layout layout =
        Walls.laidOut(
            "[[facet]]\nlength = %d\n[frame]\nblocking-spacing = %d\n".formatted(length, spacing));
    double before = 22.5;
    for (double middle : middles(layout, MemberRole.BLOCKING)) {
      assertThat(middle - before).isPositive().isLessThanOrEqualTo(spacing + 1e-6);
      before = middle;
    }
    assertThat(length - 22.5 - before).isLessThanOrEqualTo(spacing + 1e-6);
  }
}
