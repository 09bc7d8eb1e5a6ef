package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
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

  private record Ring(int number, Place.OnFacet place) {}

  private static List<Ring> rings(CheckedLayout checked, String facet) {
    List<Finding> findings = checked.findings();
    List<Ring> rings = new ArrayList<>();
    for (int at = 0; at < Math.min(MOST, findings.size()); at++) {
      if (findings.get(at).place() instanceof Place.OnFacet place && place.facet().equals(facet)) {
        rings.add(new Ring(at + 1, place));
      }
    }
    return rings;
  }

  /** The room that the rings and their numbers take, in (u, v). */
  static List<Envelope> boxes(CheckedLayout checked, String facet, Sketch sketch) {
    List<Envelope> boxes = new ArrayList<>();
    for (Ring ring : rings(checked, facet)) {
      double u = ring.place().u();
      double v = ring.place().v();
      double around = sketch.paper(RADIUS * 3);
      boxes.add(new Envelope(u - around, u + around, v - around, v + around));
    }
    return boxes;
  }

  /** Draws the rings of one facet's findings. */
  static void draw(CheckedLayout checked, String facet, FacetFrame frame, Sketch sketch) {
    double radius = sketch.paper(RADIUS);
    for (Ring ring : rings(checked, facet)) {
      Xy centre = frame.at(ring.place().u(), ring.place().v());
      sketch.circle(Layers.FINDINGS, centre, radius);
      sketch.label(
          Layers.FINDINGS,
          centre.plus(radius * 0.8, radius * 1.5),
          Integer.toString(ring.number()),
          Sketch.SMALL,
          Anchor.START);
    }
  }
}
