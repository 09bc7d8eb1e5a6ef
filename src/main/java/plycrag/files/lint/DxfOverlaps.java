package plycrag.files.lint;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.SpatialIndex;

/**
 * Finds what a machine would cut twice or not close: coincident circles and texts, lines and edges
 * of polylines that run along each other, outlines that are open or close twice.
 */
final class DxfOverlaps {
  /**
   * Nearer than this readers take two for one, mm: what drawings promise, held apart from who
   * writes.
   */
  private static final double COINCIDENT = 0.01;

  /**
   * The layer of cuts that run from one drawn line to another: from sheet's edge to sheet's edge.
   */
  private static final String CLOSING = "EDGE_THROUGH";

  /** A straight edge of an entity. */
  private record Edge(int entity, DxfTags.Point from, DxfTags.Point to) {
    double length() {
      return distance(from, to);
    }

    Envelope box() {
      return new Envelope(from.x(), to.x(), from.y(), to.y());
    }

    /** Along the edge from its start. */
    double along(DxfTags.Point point) {
      return ((point.x() - from.x()) * (to.x() - from.x())
              + (point.y() - from.y()) * (to.y() - from.y()))
          / length();
    }

    /** Away from the edge's line. */
    double aside(DxfTags.Point point) {
      return Math.abs(
          ((point.x() - from.x()) * (to.y() - from.y())
                  - (point.y() - from.y()) * (to.x() - from.x()))
              / length());
    }

    /** Whether a point lies on it. */
    boolean has(DxfTags.Point point) {
      return length() > COINCIDENT
          && aside(point) <= COINCIDENT
          && along(point) >= -COINCIDENT
          && along(point) <= length() + COINCIDENT;
    }

    boolean overlaps(Edge other) {
      double start = Math.min(along(other.from), along(other.to));
      double end = Math.max(along(other.from), along(other.to));
      return aside(other.from) <= COINCIDENT
          && aside(other.to) <= COINCIDENT
          && Math.min(end, length()) - Math.max(start, 0) > COINCIDENT;
    }

    @Override
    public String toString() {
      return from + " to " + to;
    }
  }

  private DxfOverlaps() {}

  static List<String> faults(DxfTags file) {
    List<String> faults = new ArrayList<>();
    circles(file, faults);
    texts(file, faults);
    outlines(file, faults);
    edges(file, faults);
    closing(file, faults);
    return faults;
  }

  private static void circles(DxfTags file, List<String> faults) {
    List<DxfTags.Circle> circles = file.circles();
    SpatialIndex<DxfTags.Circle> index =
        new SpatialIndex<>(circles, circle -> box(new DxfTags.Point(circle.x(), circle.y())));
    for (DxfTags.Circle one : circles) {
      DxfTags.Point centre = new DxfTags.Point(one.x(), one.y());
      long alike =
          index.near(box(centre), COINCIDENT).stream()
              .filter(other -> near(centre, new DxfTags.Point(other.x(), other.y())))
              .filter(other -> Math.abs(one.radius() - other.radius()) <= COINCIDENT)
              .count();
      if (alike > 1) {
        faults.add("coincident: " + one);
      }
    }
  }

  private static void texts(DxfTags file, List<String> faults) {
    List<DxfTags.Entry> texts = file.entities("TEXT");
    SpatialIndex<DxfTags.Entry> index = new SpatialIndex<>(texts, text -> box(text.point(11)));
    for (DxfTags.Entry one : texts) {
      long alike =
          index.near(box(one.point(11)), COINCIDENT).stream()
              .filter(other -> one.text(1).equals(other.text(1)))
              .filter(other -> near(one.point(11), other.point(11)))
              .count();
      if (alike > 1) {
        faults.add("coincident: text " + one.text(1).orElse(""));
      }
    }
  }

  private static Envelope box(DxfTags.Point place) {
    return new Envelope(place.x(), place.x(), place.y(), place.y());
  }

  private static void outlines(DxfTags file, List<String> faults) {
    for (DxfTags.Polyline polyline : file.polylines()) {
      List<DxfTags.Point> points = polyline.points();
      boolean meets = near(points.get(0), points.get(points.size() - 1));
      if (polyline.closed() && meets) {
        faults.add("first vertex repeated: " + polyline);
      } else if (!polyline.closed() && (meets || polyline.layer().startsWith("OUTLINE"))) {
        faults.add("open outline: " + polyline);
      }
    }
    file.lines().stream()
        .filter(line -> line.layer().startsWith("OUTLINE"))
        .forEach(line -> faults.add("open outline: " + line));
  }

  private static void edges(DxfTags file, List<String> faults) {
    List<Edge> edges = edges(file);
    SpatialIndex<Edge> index = new SpatialIndex<>(edges, Edge::box);
    for (Edge one : edges) {
      if (one.length() <= COINCIDENT) {
        faults.add("no length: " + one);
      } else {
        index.near(one.box(), COINCIDENT).stream()
            .filter(other -> other.entity() < one.entity() && one.overlaps(other))
            .forEach(other -> faults.add("overlap: " + one + " and " + other));
      }
    }
  }

  private static void closing(DxfTags file, List<String> faults) {
    List<DxfTags.Line> lines = file.lines();
    List<Edge> edges = edges(file);
    for (int at = 0; at < lines.size(); at++) {
      DxfTags.Line line = lines.get(at);
      if (line.layer().equals(CLOSING) && !ends(line.from(), line.to(), at, edges)) {
        faults.add("open edge: " + line);
      }
    }
    for (int at = 0; at < file.polylines().size(); at++) {
      DxfTags.Polyline chain = file.polylines().get(at);
      List<DxfTags.Point> points = chain.points();
      if (chain.layer().equals(CLOSING)
          && (chain.closed()
              || !ends(points.get(0), points.get(points.size() - 1), lines.size() + at, edges))) {
        faults.add("open edge: " + chain);
      }
    }
  }

  /** Whether other edges hold both ends of an entity. */
  private static boolean ends(DxfTags.Point from, DxfTags.Point to, int entity, List<Edge> edges) {
    return ends(from, entity, edges) && ends(to, entity, edges);
  }

  private static boolean ends(DxfTags.Point end, int entity, List<Edge> edges) {
    return edges.stream().anyMatch(edge -> edge.entity() != entity && edge.has(end));
  }

  private static List<Edge> edges(DxfTags file) {
    List<Edge> edges = new ArrayList<>();
    int entity = 0;
    for (DxfTags.Line line : file.lines()) {
      edges.add(new Edge(entity++, line.from(), line.to()));
    }
    for (DxfTags.Polyline polyline : file.polylines()) {
      List<DxfTags.Point> points = polyline.points();
      int count = polyline.closed() ? points.size() : points.size() - 1;
      for (int i = 0; i < count; i++) {
        edges.add(new Edge(entity, points.get(i), points.get((i + 1) % points.size())));
      }
      entity++;
    }
    return edges;
  }

  private static boolean near(DxfTags.Point a, DxfTags.Point b) {
    return distance(a, b) <= COINCIDENT;
  }

  private static double distance(DxfTags.Point a, DxfTags.Point b) {
    return Math.sqrt((a.x() - b.x()) * (a.x() - b.x()) + (a.y() - b.y()) * (a.y() - b.y()));
  }
}
