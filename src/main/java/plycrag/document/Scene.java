package plycrag.document;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Parts in space. Its axes are left-handed: x runs to the climber's right, y toward the climber, z
 * up from the floor; mm.
 *
 * @param title what it is
 * @param nodes a part each, no two of one name
 */
public record Scene(String title, List<Node> nodes) {
  /** Copies the nodes; rejects two of one name. */
  public Scene {
    nodes = List.copyOf(nodes);
    Set<String> names = new HashSet<>();
    for (Node node : nodes) {
      if (!names.add(node.name())) {
        throw new IllegalArgumentException("two parts have the name " + node.name());
      }
    }
  }

  /**
   * How something may be shown.
   *
   * @param red what it reflects of it, 0 to 1, without gamma
   * @param green likewise
   * @param blue likewise
   * @param opacity 1 where nothing is seen through it
   */
  public record Colour(double red, double green, double blue, double opacity) {}

  /** What a part is. */
  public enum Kind {
    /** A piece of plywood. */
    PIECE("piece", 0.72, 0.52, 0.3, 1),
    /** Timber of a frame. */
    MEMBER("member", 0.6, 0.38, 0.18, 1),
    /** Timber that holds frames up. */
    SUPPORT("support", 0.42, 0.25, 0.11, 1),
    /** What holds timber together or to the building. */
    HARDWARE("hardware", 0.3, 0.34, 0.4, 1),
    /** A threaded insert. */
    INSERT("insert", 0.1, 0.1, 0.1, 1),
    /** A screw through a sheet. */
    SCREW("screw", 0.1, 0.1, 0.1, 1),
    /** A mat. */
    MAT("mat", 0.05, 0.12, 0.3, 1),
    /** The building, and what stands in the room. */
    ROOM("room", 0.6, 0.6, 0.6, 0.3);

    private final String word;
    private final double red;
    private final double green;
    private final double blue;
    private final double opacity;

    Kind(String word, double red, double green, double blue, double opacity) {
      this.word = word;
      this.red = red;
      this.green = green;
      this.blue = blue;
      this.opacity = opacity;
    }

    /** In a word. */
    public String word() {
      return word;
    }

    /** How it may be shown. */
    public Colour colour() {
      return new Colour(red, green, blue, opacity);
    }
  }

  /**
   * A part.
   *
   * @param name its mark
   * @param kind what it is
   * @param facet the facet that it belongs to, by name, if it belongs to one
   * @param form where it is
   */
  public record Node(String name, Kind kind, Optional<String> facet, Form form) {}

  /** Where a part is. */
  public sealed interface Form {}

  /**
   * A body by its surface.
   *
   * @param corners no two in one place
   * @param triangles counter-clockwise for whoever looks at them from outside the body
   */
  public record Body(List<Xyz> corners, List<Triangle> triangles) implements Form {
    /** Copies the lists; rejects triangles whose corners it has not. */
    public Body {
      corners = List.copyOf(corners);
      triangles = List.copyOf(triangles);
      for (Triangle one : triangles) {
        if (Math.min(one.a(), Math.min(one.b(), one.c())) < 0
            || Math.max(one.a(), Math.max(one.b(), one.c())) >= corners.size()) {
          throw new IllegalArgumentException("no such corner: " + one);
        }
      }
    }
  }

  /**
   * The numbers of three corners, from 0.
   *
   * @param a the first
   * @param b the next
   * @param c the last
   */
  public record Triangle(int a, int b, int c) {}

  /**
   * A place with a way that it faces: out of its right and its upward way, as one sees it.
   *
   * @param at where it is
   * @param right a way of length one
   * @param up another, square to it
   */
  public record Spot(Xyz at, Xyz right, Xyz up) implements Form {
    /** What faces the climber in a wall that is plumb. */
    public static Spot plain(Xyz at) {
      return new Spot(at, new Xyz(1, 0, 0), new Xyz(0, 0, 1));
    }
  }
}
