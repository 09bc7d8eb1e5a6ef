package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.wall.Facet;
import plycrag.wall.FacetAtAngle;

/** From where most of what is climbed on is seen as a face. */
final class ClimbersEye {
  /** How far aside and above a viewer may stand, the most telling first (choices), degrees. */
  private static final double[] ASIDE = {30, -30, 12, -12};

  private static final double[] ABOVE = {18, 9, 3, -15};

  /** The sine of 6°: under less a face is seen from its edge. */
  private static final double SEEN = 0.1;

  private ClimbersEye() {}

  /** The first of the views that shows as many facets as any. */
  static Axonometry of(Layout layout) {
    List<FacetAtAngle> facets = facets(layout);
    Axonometry best = new Axonometry(ASIDE[0], ABOVE[0]);
    for (double above : ABOVE) {
      for (double aside : ASIDE) {
        Axonometry view = new Axonometry(aside, above);
        if (seen(facets, view) > seen(facets, best)) {
          best = view;
        }
      }
    }
    return best;
  }

  /** All facets; what swings at the angle that it is laid out at. */
  static List<FacetAtAngle> facets(Layout layout) {
    List<FacetAtAngle> facets = new ArrayList<>();
    for (List<FacetLayout> run : layout.runs()) {
      List<Facet> plain = run.stream().map(FacetLayout::facet).toList();
      facets.addAll(FacetAtAngle.of(layout.wall(), plain, angle(run)));
    }
    return facets;
  }

  /** The angle that a hinged run is laid out at; without meaning where nothing swings. */
  static double angle(List<FacetLayout> run) {
    return run.get(Math.min(1, run.size() - 1)).facet().angle();
  }

  /** Whether a facet is seen from the side that is climbed on. */
  static boolean sees(Axonometry view, FacetAtAngle facet) {
    Vector3 out = facet.at(new Vector3(0, 0, 0)).minus(facet.at(new Vector3(0, 0, 1)));
    return out.dot(view.toViewer()) > SEEN;
  }

  private static long seen(List<FacetAtAngle> facets, Axonometry view) {
    return facets.stream().filter(facet -> sees(view, facet)).count();
  }
}
