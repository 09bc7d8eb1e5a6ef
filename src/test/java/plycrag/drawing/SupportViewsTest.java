package plycrag.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.drawing.flat.FrameView;
import plycrag.drawing.room.SupportBack;
import plycrag.drawing.room.SupportSide;
import plycrag.layout.facet.FacetLayout;

/** Readings worked out by hand beside each check. */
class SupportViewsTest {
  private static final String PLUMB =
      """
      [wall]
      width = 2400
      [[facet]]
      length = 2000
      [sheet]
      thickness = 18
      [frame]
      section = [45, 90]
      [support]
      kind = "%s"
      behind = %d
      """;

  /** On rails of 140, between mats as thick. */
  private static final String STANDING =
      PLUMB.formatted("freestanding", 900).replace("[wall]", "[wall]\nraise = 140");

  private static final String MATS = "[mat]\nthickness = 140\n";

  private static final String KNEES = "lateral = \"knee-braces\"\n";

  private static List<String> words(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(shape -> ((Shape.Label) shape).text())
        .toList();
  }

  private static CheckedLayout fixed() {
    return Walls.judged(PLUMB.formatted("fixed", 300) + "fixed-to = \"masonry\"\n");
  }

  /**
   * The building is 300 behind the frame, whose back is 18 + 90 behind the face: the face stands
   * 408 before it. The ledger is 90 thick; a tie of 90 has its top 45 and 120 below the wall's, its
   * underside at 2000 - 165 - 90.
   */
  @Test
  void fromTheSideTheFaceStandsOffTheBuilding() {
    CheckedLayout checked = fixed();
    List<String> words = words(SupportSide.of(checked, checked.layout().facets()));
    assertThat(words).contains("408", "90", "1745", "LG1");
  }

  /**
   * A rail of 140 lies under a post whose front is 900 behind the frame: 900 + 108 + 90 from the
   * face to its back, and 45 to that of the beam and the sill on it.
   */
  @Test
  void fromTheSideTheFaceStandsOffThePosts() {
    CheckedLayout checked = Walls.judged(STANDING + MATS);
    List<String> words = words(SupportSide.of(checked, checked.layout().facets()));
    assertThat(words).contains("140", "45", "135", "1143");
    assertThat(words).anyMatch(word -> word.startsWith("PO1 to PO"));
  }

  /** Every station stands behind a stud: its left side reads as the stud's does. */
  @Test
  void fromBehindStationsReadAsTheirStuds() {
    CheckedLayout checked = fixed();
    FacetLayout facet = checked.layout().facets().get(0);
    List<String> frame = words(FrameView.of(checked, facet));
    List<String> back = words(SupportBack.of(checked, List.of(facet)));
    List<String> readings = back.stream().filter(word -> word.matches("[0-9.]+")).toList();
    assertThat(readings).hasSizeGreaterThan(2).isSubsetOf(frame.stream().toList());
    assertThat(back).contains("AN1", "TI1").anyMatch(word -> word.startsWith("BACK, SEEN"));
  }

  /**
   * The wall's top is 2000 above rails of 140; posts end under a tie of 90 whose top is 165 lower,
   * at 1885, and the beam of 90 lies on their backs: its underside reads 1795. Knees end under it,
   * 2 corners each.
   */
  @Test
  void fromBehindABeamAndItsKneesAreRead() {
    CheckedLayout checked = Walls.judged(STANDING + KNEES + MATS);
    List<String> words = words(SupportBack.of(checked, checked.layout().facets()));
    assertThat(words).contains("BM1", "1795", "1885").anyMatch(word -> word.startsWith("KB"));
    assertThat(words.stream().filter(word -> word.matches("[0-9.]+")).distinct())
        .hasSizeGreaterThan(10);
    assertThat(words(SupportSide.of(checked, checked.layout().facets())))
        .contains("BM1")
        .noneMatch(word -> word.startsWith("KB"));
  }
}
