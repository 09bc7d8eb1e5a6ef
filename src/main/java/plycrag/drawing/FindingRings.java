package plycrag.drawing;

import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Anchor;
import plycrag.document.Xy;
import plycrag.finding.Finding;
import plycrag.finding.Place;

/** Rings the findings of a facet, under the numbers that the list of findings repeats. */
final class FindingRings {
  private static final double RADIUS = 2.2;

  /** More rings than this would hide what they show. */
  private static final int MOST = 200;

  private FindingRings() {}

  /** Draws the rings of one facet's findings. */
  static void draw(CheckedLayout checked, String facet, FacetFrame frame, Sketch sketch) {
    List<Finding> findings = checked.findings();
    for (int at = 0; at < Math.min(MOST, findings.size()); at++) {
      if (findings.get(at).place() instanceof Place.OnFacet place && place.facet().equals(facet)) {
        Xy centre = frame.at(place.u(), place.v());
        double radius = sketch.paper(RADIUS);
        sketch.circle(Layers.FINDINGS, centre, radius);
        sketch.label(
            Layers.FINDINGS,
            centre.plus(radius * 0.8, radius * 1.5),
            Integer.toString(at + 1),
            Sketch.SMALL,
            Anchor.START);
      }
    }
  }
}
