package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Tolerance;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.skin.Piece;

/** Which pieces lie beside a piece on its facet, seen from the front. */
final class Seams {
  private final FacetLayout facet;
  private final double gap;

  /**
   * The seams of one facet.
   *
   * @param facet that they lie on
   * @param gap left at a seam, mm
   */
  Seams(FacetLayout facet, double gap) {
    this.facet = facet;
    this.gap = gap;
  }

  /** In a sentence; empty if nothing lies beside it. */
  String words(Piece piece) {
    List<String> sides = new ArrayList<>();
    for (Side side : Side.values()) {
      String marks =
          facet.pieces().stream()
              .filter(other -> isBeside(piece.box(), other.box(), side))
              .map(Piece::mark)
              .collect(Collectors.joining(" "));
      if (!marks.isEmpty()) {
        sides.add(side.words + marks);
      }
    }
    return sides.isEmpty() ? "" : "Seen from the front: " + String.join(", ", sides) + ".";
  }

  private enum Side {
    LEFT("left of it "),
    RIGHT("right of it "),
    BELOW("below it "),
    ABOVE("above it ");

    private final String words;

    Side(String words) {
      this.words = words;
    }
  }

  /** Whether a box lies a seam away on a side, along more than a corner. */
  private boolean isBeside(Envelope box, Envelope other, Side side) {
    double away =
        switch (side) {
          case LEFT -> box.getMinX() - other.getMaxX();
          case RIGHT -> other.getMinX() - box.getMaxX();
          case BELOW -> box.getMinY() - other.getMaxY();
          case ABOVE -> other.getMinY() - box.getMaxY();
        };
    boolean acrossSeam = side == Side.LEFT || side == Side.RIGHT;
    double along =
        acrossSeam
            ? Math.min(box.getMaxY(), other.getMaxY()) - Math.max(box.getMinY(), other.getMinY())
            : Math.min(box.getMaxX(), other.getMaxX()) - Math.max(box.getMinX(), other.getMinX());
    return away > -Tolerance.TOUCH && away < gap + Tolerance.TOUCH && along > gap + Tolerance.TOUCH;
  }
}
