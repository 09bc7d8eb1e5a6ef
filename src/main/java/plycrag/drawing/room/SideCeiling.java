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
import plycrag.geometry.Vector3;
import plycrag.wall.Wall;
import plycrag.wall.room.Ceiling;
import plycrag.wall.room.Ceiling.KneeWall;
import plycrag.wall.room.RoomPlane;

/**
 * What a section of the first wall shows above it and behind it: the ceiling, rafters and the low
 * wall that these stand on. A ceiling that falls along the wall is shown at both ends of it.
 */
final class SideCeiling {
  private final Wall wall;
  private final Ceiling ceiling;
  private final boolean isFirst;

  /**
   * @param wall where it stands
   * @param axes of the run that is cut
   */
  SideCeiling(Wall wall, FloorAxes axes) {
    this.wall = wall;
    this.ceiling = wall.room().ceiling();
    this.isFirst = axes.equals(FloorAxes.FIRST);
  }

  /**
   * Makes room for it.
   *
   * @param end how far toward the climber the section goes, mm
   */
  void expand(Envelope box, double end) {
    kneeWall().ifPresent(low -> box.expandToInclude(-low.behind(), low.height()));
    for (double x : ends()) {
      for (double y : List.of(0.0, end)) {
        at(x, y).ifPresent(height -> box.expandToInclude(y, height));
      }
    }
  }

  /** Where a section is taken: one place where all are the same. */
  private List<Double> ends() {
    boolean same = ceiling.plane().map(RoomPlane::right).orElse(0.0) == 0;
    return same ? List.of(0.0) : List.of(0.0, wall.frontWidth());
  }

  private Optional<KneeWall> kneeWall() {
    return ceiling.kneeWall().filter(told -> isFirst);
  }

  private Optional<Double> at(double x, double y) {
    return ceiling.at(new Vector3(x, y, 0)).filter(told -> isFirst);
  }

  void draw(Sketch sketch, Envelope box) {
    kneeWall()
        .ifPresent(
            low -> {
              Xy foot = new Xy(-low.behind(), 0);
              Xy top = new Xy(-low.behind(), low.height());
              sketch.line(Layers.PARTS, foot, top);
            });
    List<Double> ends = ends();
    for (double x : ends) {
      draw(sketch, box, x, ends.size() == 1 ? "" : x == 0 ? ", left end" : ", right end");
    }
  }

  private void draw(Sketch sketch, Envelope box, double x, String which) {
    double back = kneeWall().map(low -> -low.behind()).orElse(box.getMinX());
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
        label(sketch, new Xy(to, high.get()), called(x, (from + to) / 2) + which);
      }
    }
  }

  /** Where the ceiling and the rafters meet. */
  private Optional<Double> bend(double x) {
    return Stream.of(ceiling.plane(), ceiling.rafters()).allMatch(Optional::isPresent)
        ? bend(x, ceiling.plane().orElseThrow(), ceiling.rafters().orElseThrow())
        : Optional.empty();
  }

  private static Optional<Double> bend(double x, RoomPlane one, RoomPlane other) {
    return one.out() == other.out()
        ? Optional.empty()
        : Optional.of((other.at(x, 0) - one.at(x, 0)) / (one.out() - other.out()));
  }

  private String called(double x, double y) {
    Optional<Double> lowest = at(x, y);
    return ceiling.plane().map(plane -> plane.at(x, y)).equals(lowest) ? "ceiling" : "rafters";
  }

  private static void label(Sketch sketch, Xy at, String text) {
    sketch.label(Layers.TEXT, at.plus(0, sketch.paper(2.5)), text, Sketch.SMALL, TextAnchor.END);
  }
}
