package plycrag.params;

import java.util.List;

/**
 * An opening in a facet.
 *
 * @param facet the facet's name
 * @param name printed beside it
 * @param shape where it lies
 */
public record CutoutParameters(String facet, String name, Shape shape) {

  /** What an opening looks like. */
  public sealed interface Shape {}

  /**
   * A rectangle.
   *
   * @param left from the facet's left, mm
   * @param low from its lower edge, mm
   * @param width mm
   * @param height mm
   */
  public record Rectangle(double left, double low, double width, double height) implements Shape {}

  /**
   * A circle.
   *
   * @param centre on the facet
   * @param diameter mm
   */
  public record Circle(Corner centre, double diameter) implements Shape {}

  /**
   * Any simple polygon.
   *
   * @param corners in order round it
   */
  public record Outline(List<Corner> corners) implements Shape {
    /** Copies the corners. */
    public Outline {
      corners = List.copyOf(corners);
    }
  }
}
