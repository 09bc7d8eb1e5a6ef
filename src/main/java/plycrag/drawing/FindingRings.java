package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Anchor;
import plycrag.document.Xy;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.layout.FacetLayout;

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

  /** Draws the rings of one facet's findings, each number on the first side with room for it. */
  static void draw(CheckedLayout checked, FacetLayout layout, FacetFrame frame, Sketch sketch) {
    FreeSpot room = FreeSpot.on(layout, List.of());
    double radius = sketch.paper(RADIUS);
    for (Ring ring : rings(checked, layout.facet().name())) {
      Xy centre = frame.at(ring.place().u(), ring.place().v());
      sketch.circle(Layers.FINDINGS, centre, radius);
      String number = Integer.toString(ring.number());
      Xy place = new Xy(ring.place().u(), ring.place().v());
      sketch.label(
          Layers.FINDINGS,
          onDrawing(numberPlace(place, number, room, sketch), frame),
          number,
          Sketch.SMALL,
          Anchor.MIDDLE);
    }
  }

  private static Xy onDrawing(Xy place, FacetFrame frame) {
    return frame.at(place.x(), place.y());
  }

  private static Xy numberPlace(Xy ring, String number, FreeSpot room, Sketch sketch) {
    double halfWidth = sketch.paper(TextSize.width(number, Sketch.SMALL) / 2);
    double halfHeight = sketch.paper(Sketch.SMALL / 2);
    double out = sketch.paper(RADIUS * 0.8);
    List<Xy> sides = new ArrayList<>();
    for (int down : new int[] {1, -1}) {
      for (int left : new int[] {1, -1}) {
        sides.add(ring.plus(left * (out + halfWidth), down * (out + halfHeight)));
      }
    }
    return sides.stream()
        .filter(
            side ->
                room.isFree(
                    new Envelope(
                        side.x() - halfWidth,
                        side.x() + halfWidth,
                        side.y() - halfHeight,
                        side.y() + halfHeight)))
        .findFirst()
        .orElse(sides.get(0));
  }
}
