package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.Trig;

/** Writes words where they are clear of what is drawn and of those written before. */
final class ClearWords {
  private static final double AROUND = 0.8;

  /** How far words stand from what their leader begins at, in turn, mm on paper. */
  private static final List<Double> AWAY = List.of(5.0, 7.0, 10.0, 14.0, 19.0, 26.0, 35.0);

  private static final int WAYS = 16;

  /** A leader in stretches so short that their boxes take little beside it. */
  private static final int STRETCHES = 20;

  private final Sketch sketch;
  private final List<Envelope> taken = new ArrayList<>();
  private final List<Envelope> written = new ArrayList<>();

  ClearWords(Sketch sketch) {
    this.sketch = sketch;
  }

  /** What is drawn in a box, or is to stay empty. */
  void keepOff(Envelope box) {
    taken.add(box);
  }

  void keepOffEdges(Polygon area) {
    FreeSpot.addEdges(area, taken);
  }

  /** Whether an upright or a level line of small words goes into a box. */
  boolean holds(Envelope box, String text) {
    double longer = Math.max(box.getWidth(), box.getHeight());
    double shorter = Math.min(box.getWidth(), box.getHeight());
    return longer >= sketch.paper(TextSize.width(text, Sketch.SMALL))
        && shorter >= sketch.paper(Sketch.SMALL);
  }

  /** What such a line takes in the middle of a box, along it. */
  Envelope lying(Envelope box, String text) {
    Xy middle = new Xy(box.centre().x, box.centre().y);
    double length = sketch.paper(TextSize.width(text, Sketch.SMALL));
    double height = sketch.paper(Sketch.SMALL);
    return box.getWidth() < box.getHeight()
        ? box(middle, height, length)
        : box(middle, length, height);
  }

  /** In the middle of a box, along it. */
  void along(Envelope box, String text) {
    write(box, text, Sketch.SMALL, box.getWidth() < box.getHeight());
  }

  /** Level in an area, or upright, if there is room. */
  boolean in(Polygon area, String text) {
    FreeSpot spots = new FreeSpot(taken);
    double length = sketch.paper(TextSize.width(text, Sketch.SMALL) + 2 * AROUND);
    double height = sketch.paper(Sketch.SMALL + 2 * AROUND);
    Optional<Envelope> level = spots.in(area, length, height).map(at -> box(at, length, height));
    Optional<Envelope> box =
        level.or(() -> spots.in(area, height, length).map(at -> box(at, height, length)));
    box.ifPresent(free -> write(free, text, Sketch.SMALL, level.isEmpty()));
    return box.isPresent();
  }

  /** Level at the first of some places that is free. */
  boolean at(List<Xy> places, String text, double size) {
    FreeSpot spots = new FreeSpot(taken);
    Optional<Envelope> box =
        places.stream().map(at -> room(at, text, size)).filter(spots::isFree).findFirst();
    box.ifPresent(free -> write(free, text, size, false));
    return box.isPresent();
  }

  /** As near as there is room to a place that a leader begins at; on it where there is none. */
  void beside(Xy foot, String text, double size) {
    FreeSpot spots = new FreeSpot(taken);
    for (double away : AWAY) {
      for (int way = 0; way < WAYS; way++) {
        double angle = 360.0 * way / WAYS;
        Xy at =
            foot.plus(sketch.paper(away) * Trig.cos(angle), sketch.paper(away) * Trig.sin(angle));
        Envelope box = room(at, text, size);
        List<Envelope> leader = leader(foot, box);
        if (spots.isFree(box) && leader.stream().noneMatch(this::isOnWords)) {
          Coordinate end = end(foot, box);
          sketch.line(Layers.DIMENSIONS, foot, new Xy(end.x, end.y));
          sketch.circle(Layers.DIMENSIONS, foot, sketch.paper(0.35));
          taken.addAll(leader);
          write(box, text, size, false);
          return;
        }
      }
    }
    write(room(foot, text, size), text, size, false);
  }

  private boolean isOnWords(Envelope stretch) {
    return written.stream().anyMatch(stretch::intersects);
  }

  private static List<Envelope> leader(Xy foot, Envelope box) {
    LineSegment line = new LineSegment(new Coordinate(foot.x(), foot.y()), end(foot, box));
    List<Envelope> stretches = new ArrayList<>();
    for (int part = 0; part < STRETCHES; part++) {
      Coordinate from = line.pointAlong((double) part / STRETCHES);
      stretches.add(new Envelope(from, line.pointAlong((part + 1.0) / STRETCHES)));
    }
    return stretches;
  }

  /** The place of a box that is nearest to another. */
  private static Coordinate end(Xy foot, Envelope box) {
    return new Coordinate(
        Math.max(box.getMinX(), Math.min(foot.x(), box.getMaxX())),
        Math.max(box.getMinY(), Math.min(foot.y(), box.getMaxY())));
  }

  private Envelope room(Xy at, String text, double size) {
    double width = sketch.paper(TextSize.width(text, size) + 2 * AROUND);
    return box(at, width, sketch.paper(size + 2 * AROUND));
  }

  private static Envelope box(Xy at, double width, double height) {
    return new Envelope(
        at.x() - width / 2, at.x() + width / 2, at.y() - height / 2, at.y() + height / 2);
  }

  private void write(Envelope box, String text, double size, boolean upright) {
    Xy at = new Xy(box.centre().x, box.centre().y);
    if (upright) {
      sketch.labelUp(Layers.TEXT, at, text, size, TextAnchor.MIDDLE);
    } else {
      sketch.label(Layers.TEXT, at, text, size, TextAnchor.MIDDLE);
    }
    taken.add(box);
    written.add(box);
  }
}
