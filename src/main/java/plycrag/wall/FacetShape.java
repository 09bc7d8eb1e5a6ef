package plycrag.wall;

import java.util.List;

/** A part of a facet, from its left and its lower edge. */
public sealed interface FacetShape {

  /**
   * A rectangle.
   *
   * @param left from the facet's left, mm
   * @param low from its lower edge, mm
   * @param width mm
   * @param height mm
   */
  record Rectangle(double left, double low, double width, double height) implements FacetShape {}

  /**
   * A circle.
   *
   * @param centre on the facet
   * @param diameter mm
   */
  record Circle(FacetPoint centre, double diameter) implements FacetShape {}

  /**
   * Any simple polygon.
   *
   * @param corners in order round it
   */
  record Outline(List<FacetPoint> corners) implements FacetShape {
    /** Copies the corners. */
    public Outline {
      corners = List.copyOf(corners);
    }
  }
}
