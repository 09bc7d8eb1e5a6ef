package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Tolerance;
import plycrag.wall.Facet;
import plycrag.wall.room.Ceiling;
import plycrag.wall.room.Ceiling.KneeWall;
import plycrag.wall.room.RoomPlane;

/**
 * What a section of a wall shows above it and behind it: the ceiling, rafters and, of the first
 * wall, the low wall that these stand on. A ceiling that falls along the wall is shown at both ends
 * of it.
 */
final class SideCeiling {
  private final Optional<RoomPlane> ceiling;
  private final Optional<RoomPlane> rafters;
  private final Optional<KneeWall> kneeWall;
  private final List<Double> ends;

  /**
   * @param told what is above
   * @param facets of the wall that is cut, from the floor up
   */
  SideCeiling(Ceiling told, List<Facet> facets) {
    FloorAxes axes = facets.get(0).plane().floorAxes();
    this.ceiling = told.plane().map(plane -> plane.in(axes));
    this.rafters = told.rafters().map(plane -> plane.in(axes));
    this.kneeWall = told.kneeWall().filter(wall -> axes.equals(FloorAxes.FIRST));
    this.ends = ends(facets);
  }

  /** Where a section is taken, from the left: one place where all are the same. */
  private List<Double> ends(List<Facet> facets) {
    double left = facets.stream().mapToDouble(one -> one.plane().left()).min().orElseThrow();
    double right =
        facets.stream().mapToDouble(one -> one.plane().left() + one.width()).max().orElseThrow();
    boolean same =
        planes().allMatch(plane -> Math.abs(plane.right() * (right - left)) < Tolerance.TOUCH);
    return same ? List.of(left) : List.of(left, right);
  }

  private Stream<RoomPlane> planes() {
    return Stream.concat(ceiling.stream(), rafters.stream());
  }

  /** Whether it is higher at one end of the wall than at the other. */
  boolean fallsAlong() {
    return ends.size() > 1;
  }

  /**
   * Makes room for it.
   *
   * @param end how far toward the climber the section goes, mm
   */
  void expand(Envelope box, double end) {
    kneeWall.ifPresent(low -> box.expandToInclude(-low.behind(), low.height()));
    for (double x : ends) {
      for (double y : List.of(0.0, end)) {
        at(x, y).ifPresent(height -> box.expandToInclude(y, height));
      }
    }
  }

  private Optional<Double> at(double x, double y) {
    return planes().map(plane -> plane.at(x, y)).min(Double::compare);
  }

  void draw(Sketch sketch, Envelope box) {
    kneeWall.ifPresent(
        low -> {
          Xy foot = new Xy(-low.behind(), 0);
          Xy top = new Xy(-low.behind(), low.height());
          sketch.line(Layers.PARTS, foot, top);
        });
    for (double x : ends) {
      draw(sketch, box, x);
    }
  }

  private void draw(Sketch sketch, Envelope box, double x) {
    double back = kneeWall.map(low -> -low.behind()).orElse(box.getMinX());
    List<Double> stops = new ArrayList<>(List.of(back));
    bend(x).filter(y -> back < y && y < box.getMaxX()).ifPresent(stops::add);
    stops.add(box.getMaxX());
    for (int stop = 1; stop < stops.size(); stop++) {
      double from = stops.get(stop - 1);
      double to = stops.get(stop);
      Optional<Double> low = at(x, from);
      Optional<Double> high = at(x, to);
      if (low.isPresent() && high.isPresent()) {
        sketch.line(Layers.PARTS, new Xy(from, low.get()), new Xy(to, high.get()));
        double up = sketch.paper(isLower(x, to) ? -2.5 : 2.5);
        Xy label = new Xy(to, high.get() + up);
        String text = called(x, (from + to) / 2) + end(x);
        sketch.label(Layers.TEXT, label, text, Sketch.SMALL, TextAnchor.END);
      }
    }
  }

  /** The name of the lower of two lines stands under it, where the other's cannot be. */
  private boolean isLower(double x, double y) {
    return ends.stream().anyMatch(end -> at(end, y).orElseThrow() > at(x, y).orElseThrow());
  }

  private String end(double x) {
    return !fallsAlong() ? "" : x == ends.get(0) ? ", left end" : ", right end";
  }

  /** Where the ceiling and the rafters meet. */
  private Optional<Double> bend(double x) {
    return ceiling.flatMap(plane -> rafters.flatMap(other -> bend(x, plane, other)));
  }

  private static Optional<Double> bend(double x, RoomPlane one, RoomPlane other) {
    return one.out() == other.out()
        ? Optional.empty()
        : Optional.of((other.at(x, 0) - one.at(x, 0)) / (one.out() - other.out()));
  }

  private String called(double x, double y) {
    return ceiling.map(plane -> plane.at(x, y)).equals(at(x, y)) ? "ceiling" : "rafters";
  }
}
