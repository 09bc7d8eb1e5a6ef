package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.params.SheetParameters;
import plycrag.params.SheetParameters.Lay;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * The pieces that skin a facet, in straight rows and columns, and the seams between them. Pieces
 * and gaps tile the facet.
 *
 * @param lay which way the sheets' long side runs
 * @param pieces from the floor up, left to right
 * @param seams those that run up first, each kind in order
 */
public record Tiling(Lay lay, List<Piece> pieces, List<Seam> seams) {
  /** Copies the lists. */
  public Tiling {
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
  }

  /**
   * The tiling that was asked for; if none was, the one with fewer sheets, then across.
   *
   * @param first the number of the first piece
   */
  static Tiling of(Facet facet, Wall wall, int first) {
    Tiler tiler = new Tiler(facet, wall, first);
    if (wall.sheet().lay().isPresent()) {
      return tiler.laid(wall.sheet().lay().get());
    }
    Tiling across = tiler.laid(Lay.ACROSS);
    Tiling up = tiler.laid(Lay.UP);
    return up.pieces.size() < across.pieces.size() ? up : across;
  }

  /** Tiles one facet. Blanks fill it with their gaps; faces are trimmed to their edges. */
  private static final class Tiler {
    private final Facet facet;
    private final Wall wall;
    private final int first;
    private final FoldCut below;
    private final FoldCut above;

    Tiler(Facet facet, Wall wall, int first) {
      this.facet = facet;
      this.wall = wall;
      this.first = first;
      this.below = FoldCut.below(facet, wall);
      this.above = FoldCut.above(facet, wall);
    }

    Tiling laid(Lay lay) {
      SheetParameters sheet = wall.sheet();
      boolean across = lay == Lay.ACROSS;
      double low = -below.blank();
      double high = facet.length() + above.blank();
      double wide = across ? sheet.length() : sheet.width();
      double tall = across ? sheet.width() : sheet.length();
      Course columns = Course.of(0, facet.width(), wide, sheet, wall.tape());
      Course rows = Course.of(low, high, tall, sheet, wall.tape());
      List<Seam> seams = new ArrayList<>();
      columns.joints().forEach(at -> seams.add(new Seam(Axis.UP, at, sheet.seamGap())));
      rows.joints().forEach(at -> seams.add(new Seam(Axis.ACROSS, at, sheet.seamGap())));
      return new Tiling(lay, pieces(columns, rows), seams);
    }

    private List<Piece> pieces(Course columns, Course rows) {
      List<Piece> pieces = new ArrayList<>();
      for (Course.Span row : rows.spans()) {
        for (Course.Span column : columns.spans()) {
          pieces.add(
              new Piece(
                  "P" + (first + pieces.size()),
                  face(column, row, below.front(), above.front()),
                  face(column, row, below.back(), above.back())));
        }
      }
      return pieces;
    }

    private Polygon face(Course.Span column, Course.Span row, double under, double over) {
      double low = Math.max(row.low(), -under);
      double high = Math.min(row.high(), facet.length() + over);
      return Shapes.rectangle(column.low(), low, column.high(), high);
    }
  }
}
