package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.FacetFrame;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.finding.Finding;
import plycrag.finding.FindingGroup;
import plycrag.finding.Place;
import plycrag.layout.facet.FacetLayout;

/**
 * Rings the findings of a facet, under the numbers that the list of findings repeats. What lies
 * beside the facet, such as a zone that missed it, is ringed at the facet's edge, where it is
 * nearest.
 */
final class FindingRings {
  private static final double RADIUS = 2.2;

  /** More rings than this would hide what they show. */
  private static final int MOST = 200;

  private static final double[] AWAY = {0.8, 1.6, 2.4, 3.2, 4};

  private static final int[][] SIDES = {
    {1, 1}, {-1, 1}, {1, -1}, {-1, -1}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}
  };

  private FindingRings() {}

  private record Ring(int number, Place.OnFacet place) {}

  private static List<Ring> rings(CheckedLayout checked, FacetLayout layout) {
    List<FindingGroup> groups = checked.groups();
    return IntStream.range(0, groups.size())
        .boxed()
        .flatMap(at -> numbered(at + 1, groups.get(at)))
        .limit(MOST)
        .filter(ring -> ring.place().facet().equals(layout.facet().name()))
        .map(ring -> new Ring(ring.number(), onFacet(ring.place(), layout)))
        .toList();
  }

  /** Equal findings have one number. */
  private static Stream<Ring> numbered(int number, FindingGroup group) {
    return group.findings().stream()
        .map(Finding::place)
        .flatMap(place -> place instanceof Place.OnFacet on ? Stream.of(on) : Stream.empty())
        .map(on -> new Ring(number, on));
  }

  private static Place.OnFacet onFacet(Place.OnFacet place, FacetLayout layout) {
    double lowest = Math.min(0, layout.footing().plateLow());
    return new Place.OnFacet(
        place.facet(),
        Math.max(0, Math.min(layout.facet().width(), place.u())),
        Math.max(lowest, Math.min(layout.facet().length(), place.v())));
  }

  /** The room that the rings and their numbers take, in (u, v). */
  static List<Envelope> boxes(CheckedLayout checked, FacetLayout layout, Sketch sketch) {
    List<Envelope> boxes = new ArrayList<>();
    for (Ring ring : rings(checked, layout)) {
      double u = ring.place().u();
      double v = ring.place().v();
      double around = sketch.paper(RADIUS * 3);
      boxes.add(new Envelope(u - around, u + around, v - around, v + around));
    }
    return boxes;
  }

  /**
   * Draws the rings of one facet's findings, each number on the first side with room for it.
   *
   * @param taken what words already take, in (u, v)
   */
  static void draw(
      CheckedLayout checked,
      FacetLayout layout,
      List<Envelope> taken,
      FacetFrame frame,
      Sketch sketch) {
    FreeSpot room = FreeSpot.on(layout, List.of());
    List<Envelope> words = new ArrayList<>(taken);
    double radius = sketch.paper(RADIUS);
    for (Ring ring : rings(checked, layout)) {
      Xy centre = frame.at(ring.place().u(), ring.place().v());
      sketch.circle(Layers.FINDINGS, centre, radius);
      String number = Integer.toString(ring.number());
      Envelope box = numberBox(ring, number, room, words, sketch);
      words.add(box);
      Xy at = frame.at(box.centre().x, box.centre().y);
      sketch.label(Layers.FINDINGS, at, number, Sketch.SMALL, TextAnchor.MIDDLE);
    }
  }

  private static Envelope numberBox(
      Ring ring, String number, FreeSpot room, List<Envelope> words, Sketch sketch) {
    List<Envelope> boxes = sides(ring, number, sketch);
    List<Envelope> apart =
        boxes.stream().filter(box -> words.stream().noneMatch(box::intersects)).toList();
    return apart.stream()
        .filter(room::isFree)
        .findFirst()
        .orElse(apart.isEmpty() ? boxes.get(0) : apart.get(0));
  }

  /** Beside the ring on eight sides, then further away. */
  private static List<Envelope> sides(Ring ring, String number, Sketch sketch) {
    double halfWidth = sketch.paper(TextSize.width(number, Sketch.SMALL) / 2);
    double halfHeight = sketch.paper(Sketch.SMALL / 2);
    List<Envelope> boxes = new ArrayList<>();
    for (double away : AWAY) {
      double out = sketch.paper(RADIUS * away);
      for (int[] side : SIDES) {
        double u = ring.place().u() + side[0] * (out + halfWidth);
        double v = ring.place().v() + side[1] * (out + halfHeight);
        boxes.add(new Envelope(u - halfWidth, u + halfWidth, v - halfHeight, v + halfHeight));
      }
    }
    return boxes;
  }
}
