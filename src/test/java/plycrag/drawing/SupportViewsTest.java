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

  private static final String KNEES = "lateral = \"knee-braces\"\n";

  private static List<String> words(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(shape -> ((Shape.Label) shape).text())
        .toList();
  }

  private static CheckedLayout judged(String kind, int behind) {
    return Walls.judged(PLUMB.formatted(kind, behind) + fixing(kind));
  }

  private static String fixing(String kind) {
    return kind.equals("fixed") ? "fixed-to = \"masonry\"\n" : "";
  }

  /**
   * The building is 300 behind the frame, whose back is 18 + 90 behind the face: the face stands
   * 408 before it. The ledger is 45 thick; a tie ends level with the wall, 90 above its underside.
   */
  @Test
  void fromTheSideTheFaceStandsOffTheBuilding() {
    CheckedLayout checked = judged("fixed", 300);
    List<String> words = words(SupportSide.of(checked, checked.layout().facets()));
    assertThat(words).contains("408", "45", "1910", "LG1");
  }

  /** A rail of 90 lies under a post whose front is 900 behind the frame: 900 + 108 + 90. */
  @Test
  void fromTheSideTheFaceStandsOffThePosts() {
    CheckedLayout checked = judged("freestanding", 900);
    List<String> words = words(SupportSide.of(checked, checked.layout().facets()));
    assertThat(words).contains("1098", "90");
    assertThat(words).anyMatch(word -> word.startsWith("PO1 to PO"));
  }

  /** Every station stands behind a stud: its left side reads as the stud's does. */
  @Test
  void fromBehindStationsReadAsTheirStuds() {
    CheckedLayout checked = judged("fixed", 300);
    FacetLayout facet = checked.layout().facets().get(0);
    List<String> frame = words(FrameView.of(checked, facet));
    List<String> back = words(SupportBack.of(checked, List.of(facet)));
    List<String> readings = back.stream().filter(word -> word.matches("[0-9.]+")).toList();
    assertThat(readings).hasSizeGreaterThan(2).isSubsetOf(frame.stream().toList());
    assertThat(back).contains("AN1", "TI1").anyMatch(word -> word.startsWith("BACK, SEEN"));
  }

  /**
   * The wall's top is 2000 above rails of 90; a tie of 90 ends level with it, and the beam of 90
   * lies under the ties: its underside reads 1910. Knees end under it, 2 corners each.
   */
  @Test
  void fromBehindABeamAndItsKneesAreRead() {
    CheckedLayout checked = Walls.judged(PLUMB.formatted("freestanding", 900) + KNEES);
    List<String> words = words(SupportBack.of(checked, checked.layout().facets()));
    assertThat(words).contains("BM1", "1910").anyMatch(word -> word.startsWith("KB"));
    assertThat(words.stream().filter(word -> word.matches("[0-9.]+")).distinct())
        .hasSizeGreaterThan(10);
    assertThat(words(SupportSide.of(checked, checked.layout().facets())))
        .contains("BM1")
        .noneMatch(word -> word.startsWith("KB"));
  }
}
