package plycrag.document;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Something drawn, in model millimetres, y up. */
public sealed interface Shape {

  /** The layer it lies on. */
  Layer layer();

  /** A straight line. */
  record Line(Layer layer, Xy from, Xy to) implements Shape {}

  /** An open chain of straight lines through at least two points. */
  record Path(Layer layer, List<Xy> points) implements Shape {
    /** Copies the points. */
    public Path {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("a path needs two points");
      }
    }
  }

  /** A closed polygon; the first vertex is not repeated at the end. */
  record Outline(Layer layer, List<Xy> vertices, Fill fill) implements Shape {
    /** Copies the vertices; rejects a repeated first one. */
    public Outline {
      Objects.requireNonNull(fill);
      vertices = List.copyOf(vertices);
      if (vertices.size() < 3 || vertices.get(0).equals(vertices.get(vertices.size() - 1))) {
        throw new IllegalArgumentException("an outline has three vertices or more, none twice");
      }
    }
  }

  /**
   * A filled area without an edge. Formats that are cut or edited leave it out; the first vertex is
   * not repeated at the end.
   */
  record Area(Layer layer, List<Xy> vertices, Fill fill) implements Shape {
    /** Copies the vertices; rejects an area that would not show. */
    public Area {
      vertices = List.copyOf(vertices);
      if (vertices.size() < 3 || fill == Fill.NONE) {
        throw new IllegalArgumentException("an area has three vertices or more, and a fill");
      }
    }
  }

  /** A circle. */
  record Circle(Layer layer, Xy centre, double radius, Fill fill) implements Shape {
    /** Rejects a circle without size. */
    public Circle {
      Objects.requireNonNull(fill);
      if (!(radius > 0) || !Double.isFinite(radius)) {
        throw new IllegalArgumentException("radius " + radius);
      }
    }
  }

  /**
   * A line of text.
   *
   * @param at where the anchor stands, on the middle of the capitals' height
   * @param text one line, no control characters
   * @param height of capitals at final size, mm on paper whatever the drawing's scale
   * @param anchor which point of the text stands there
   * @param turn counter-clockwise, degrees: 0 reads from the bottom, 90 from the right
   */
  record Label(Layer layer, Xy at, String text, double height, TextAnchor anchor, double turn)
      implements Shape {
    /** Rejects text that is not one printable line. */
    public Label {
      Objects.requireNonNull(anchor);
      if (text.isEmpty() || text.chars().anyMatch(Character::isISOControl)) {
        throw new IllegalArgumentException("not a line of text: " + text);
      }
      if (!(height > 0)) {
        throw new IllegalArgumentException("text height " + height);
      }
    }

    /** The mark that it begins with, if it is one of these. */
    public Optional<String> mark(Set<String> marks) {
      String first = text.split("[ ,]", 2)[0];
      return marks.contains(first) ? Optional.of(first) : Optional.empty();
    }
  }
}
