package plycrag.check.clearance;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;

/** The edges of pieces at a seam 601 mm up, with and without blocking. */
class SeamBackedTest {

  private static final String SEAMED =
      """
      [wall]
      name = "Seam"
      [[facet]]
      width = 600
      length = 1202
      [sheet]
      length = 600
      width = 600
      [frame]
      stud-spacing = 600
      """;

  @Test
  void passesWithBlocking() {
    Found.by("seam-backing", SEAMED).isNothing();
  }

  @Test
  void findsAnEdgeWithoutBlocking() {
    // studs back 0 to 45 and 555 to 600; 510 remain bare at the top of P1, and as much under P2
    Found.by("seam-backing", withoutBlocking(Walls.laidOut(SEAMED)))
        .times(2)
        .isError(true)
        .at(300, 600)
        .between("P1", "")
        .measured(-510, 0)
        .says(
            "510 mm of an edge of piece P1 has no timber behind it, and stands up to 255 mm from it")
        .suggests("choose a smaller seam gap, broader timber or other backing at the seams");
  }

  private static Layout withoutBlocking(Layout layout) {
    FacetLayout facet = layout.facets().get(0);
    List<Member> members =
        facet.members().stream().filter(member -> member.role() != MemberRole.BLOCKING).toList();
    return new Layout(
        layout.wall(),
        List.of(
            new FacetLayout(
                new FramedFacet(
                    facet.facet(), facet.footing(), facet.pieces(), facet.seams(), members),
                List.of(),
                List.of(),
                facet.inserts(),
                facet.omissions(),
                facet.screwPoints(),
                facet.settings(),
                facet.surroundings())),
        layout.support(),
        layout.sheets(),
        layout.faces(),
        layout.offcuts(),
        layout.fixings(),
        layout.hardware());
  }
}
