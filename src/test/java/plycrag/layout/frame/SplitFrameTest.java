package plycrag.layout.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;

/** A wall whose frame comes in two: facets of one angle on each other. */
class SplitFrameTest {

  /** Their plates of 45 mm lie flat on each other, square to the face, and are bolted. */
  @ParameterizedTest
  @ValueSource(doubles = {-10, 0, 25, 50})
  void theFramesAreBoltedFlatOnEachOther(double angle) {
    String half = "length = 1220\nwidth = 1800\nangle = " + angle + "\n";
    Layout layout =
        Walls.laidOut(
            "[wall]\nraise = 300\n[[facet]]\nname = \"low\"\n"
                + half
                + "[[facet]]\nname = \"high\"\n"
                + half);
    FacetLayout low = layout.facets().get(0);
    assertThat(low.joints().stream().filter(one -> one.kind() == Joint.Kind.FOLD))
        .singleElement()
        .satisfies(joint -> assertThat(joint.length()).isCloseTo(1800, within(0.01)))
        .satisfies(
            joint -> assertThat(joint.place().getY()).isCloseTo(1220 - 45 / 2.0, within(0.01)));
    assertThat(layout.members()).allMatch(member -> Math.abs(member.rip()) < 0.01);
    Found.by("members-overlap", layout).isNothing();
    Found.by("seam-backing", layout).isNothing();
  }
}
