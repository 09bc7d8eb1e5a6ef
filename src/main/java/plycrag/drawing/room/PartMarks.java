package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Trig;

/**
 * Sets each part's mark where neither lines nor other marks are in the way: on its own face if it
 * is broad enough, else off all faces, with a leader to a place of the part that is seen.
 */
final class PartMarks {
  /** How far from its line a mark may stand, in turn, mm on paper. */
  private static final double[] AWAY = {2.5, 4, 6, 9, 13, 18, 25, 34, 45, 57, 70};

  private static final int WAYS = 16;

  /** Parts of a face's box on whose borders marks are tried, each way. */
  private static final int PLACES = 12;

  private static final double STRETCH = 1.5;
  private static final double AROUND = 0.6;

  private final Sketch sketch;
  private final Map<String, List<LineString>> parts = new LinkedHashMap<>();
  private final Map<String, Polygon> faces = new LinkedHashMap<>();
  private final List<LineString> others = new ArrayList<>();
  private final List<Envelope> boxes = new ArrayList<>();
  private final List<Envelope> written = new ArrayList<>();
  private final List<Envelope> leaders = new ArrayList<>();

  PartMarks(Sketch sketch) {
    this.sketch = sketch;
  }

  /**
   * A part and what is seen of it; one that is wholly hidden gets no mark. What is called alike, as
   * a post and the opening around it may be, is one part.
   */
  void add(String mark, List<LineString> lines) {
    if (!lines.isEmpty()) {
      parts.merge(mark, lines, (one, more) -> Stream.concat(one.stream(), more.stream()).toList());
    }
  }

  /** Lines that are drawn beside the parts: no mark may stand on them. */
  void keepOff(List<LineString> lines) {
    others.addAll(lines);
  }

  /** A closed way that is drawn beside the parts. */
  void keepOffWay(List<Xy> corners) {
    for (int at = 0; at < corners.size(); at++) {
      Xy from = corners.get(at);
      Xy to = corners.get((at + 1) % corners.size());
      others.add(Shapes.line(from.x(), from.y(), to.x(), to.y()));
    }
  }

  /** Something else that is drawn: no mark may stand on it. */
  void keepOff(Envelope box) {
    boxes.add(box);
  }

  /** What is seen of a part's face: its own mark may stand on it, and no other. */
  void face(String mark, Geometry open) {
    List<Polygon> areas = Shapes.areas(open);
    if (parts.containsKey(mark) && !areas.isEmpty()) {
      faces.put(mark, Shapes.largest(areas));
    }
  }

  /** Whether nothing lies in a box of what marks keep off. */
  boolean isFree(Envelope box) {
    return stretches().stream().noneMatch(box::intersects);
  }

  /** Sets all marks; what they take together. */
  Envelope draw() {
    SpatialIndex<Envelope> taken = new SpatialIndex<>(stretches(), box -> box);
    Envelope all = new Envelope();
    parts.forEach((mark, lines) -> all.expandToInclude(draw(mark, lines, taken)));
    return all;
  }

  /** All lines in stretches so short that their boxes take little beside them. */
  private List<Envelope> stretches() {
    List<Envelope> all = new ArrayList<>(boxes);
    for (List<LineString> lines : parts.values()) {
      lines.forEach(line -> all.addAll(stretches(segment(line))));
    }
    others.forEach(line -> all.addAll(stretches(segment(line))));
    return all;
  }

  private List<Envelope> stretches(LineSegment line) {
    List<Envelope> boxes = new ArrayList<>();
    int count = 1 + (int) (line.getLength() / sketch.paper(STRETCH));
    for (int part = 0; part < count; part++) {
      Coordinate from = line.pointAlong((double) part / count);
      boxes.add(new Envelope(from, line.pointAlong((part + 1.0) / count)));
    }
    return boxes;
  }

  /** Whether a mark and its leader keep clear of all marks and leaders before. */
  private boolean isClear(Coordinate foot, Envelope box) {
    List<Envelope> leader = stretches(new LineSegment(foot, end(foot, box)));
    return Stream.concat(written.stream(), leaders.stream()).noneMatch(box::intersects)
        && leader.stream().noneMatch(part -> written.stream().anyMatch(part::intersects));
  }

  /** The place of a box that is nearest to another. */
  private static Coordinate end(Coordinate foot, Envelope box) {
    return new Coordinate(
        Math.max(box.getMinX(), Math.min(foot.x, box.getMaxX())),
        Math.max(box.getMinY(), Math.min(foot.y, box.getMaxY())));
  }

  private static LineSegment segment(LineString line) {
    return new LineSegment(line.getCoordinateN(0), line.getCoordinateN(line.getNumPoints() - 1));
  }

  private Envelope draw(String mark, List<LineString> lines, SpatialIndex<Envelope> taken) {
    double halfWidth = sketch.paper(TextSize.width(mark, Sketch.SMALL) / 2 + AROUND);
    double halfHeight = sketch.paper(Sketch.SMALL / 2 + AROUND);
    List<Spot> spots = spots(mark, lines);
    Coordinate foot = spots.get(0).foot();
    Envelope box = box(foot, halfWidth, halfHeight);
    for (Spot spot : spots) {
      Envelope tried = box(spot.middle(), halfWidth, halfHeight);
      if (taken.isFree(tried) && isClear(spot.foot(), tried) && isOnOwnFace(mark, tried)) {
        foot = spot.foot();
        box = tried;
        break;
      }
    }
    written.add(box);
    Xy at = new Xy(box.centre().x, box.centre().y);
    sketch.label(Layers.TEXT, at, mark, Sketch.SMALL, TextAnchor.MIDDLE);
    leader(foot, box);
    return box;
  }

  /** A place for a mark, and where its leader begins. */
  private record Spot(Coordinate foot, Coordinate middle) {}

  /** On the part's face from its middle outward, then beside that, or beside its longest line. */
  private List<Spot> spots(String mark, List<LineString> lines) {
    if (!faces.containsKey(mark)) {
      LineString longest =
          lines.stream().max(Comparator.comparingDouble(LineString::getLength)).orElseThrow();
      return spots(segment(longest));
    }
    Coordinate inside = faces.get(mark).getInteriorPoint().getCoordinate();
    List<Spot> spots = new ArrayList<>(onFace(faces.get(mark).getEnvelopeInternal()));
    spots.addAll(spots(new LineSegment(inside, inside)));
    return spots;
  }

  private static List<Spot> onFace(Envelope box) {
    Coordinate middle = box.centre();
    List<Spot> spots = new ArrayList<>();
    for (int column = 1; column < PLACES; column++) {
      for (int row = 1; row < PLACES; row++) {
        Coordinate at =
            new Coordinate(
                box.getMinX() + box.getWidth() * column / PLACES,
                box.getMinY() + box.getHeight() * row / PLACES);
        spots.add(new Spot(at, at));
      }
    }
    spots.sort(Comparator.comparingDouble(spot -> spot.middle().distance(middle)));
    return spots;
  }

  /** Whether a mark's box lies on no face, or wholly on the part's own. */
  private boolean isOnOwnFace(String mark, Envelope box) {
    Polygon area = Shapes.rectangle(box);
    return faces.entrySet().stream()
        .allMatch(
            face ->
                face.getKey().equals(mark)
                    ? face.getValue().covers(area) || !faces.get(mark).intersects(area)
                    : !face.getValue().intersects(area));
  }

  private List<Spot> spots(LineSegment line) {
    List<Spot> spots = new ArrayList<>();
    for (double away : AWAY) {
      for (double along : new double[] {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9}) {
        Coordinate foot = line.pointAlong(along);
        for (int way = 0; way < WAYS; way++) {
          double angle = 360.0 * way / WAYS;
          double out = sketch.paper(away);
          spots.add(
              new Spot(
                  foot,
                  new Coordinate(foot.x + out * Trig.cos(angle), foot.y + out * Trig.sin(angle))));
        }
      }
    }
    return spots;
  }

  private static Envelope box(Coordinate middle, double halfWidth, double halfHeight) {
    return new Envelope(
        middle.x - halfWidth, middle.x + halfWidth, middle.y - halfHeight, middle.y + halfHeight);
  }

  /** From the part's line to the nearest place of the mark's box. */
  private void leader(Coordinate foot, Envelope box) {
    if (!box.contains(foot)) {
      Coordinate end = end(foot, box);
      leaders.addAll(stretches(new LineSegment(foot, end)));
      sketch.line(Layers.DIMENSIONS, new Xy(foot.x, foot.y), new Xy(end.x, end.y));
      sketch.circle(Layers.DIMENSIONS, new Xy(foot.x, foot.y), sketch.paper(0.35));
    }
  }
}
