package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Shapes;
import plycrag.params.SheetParameters;
import plycrag.params.SheetParameters.Lay;
import plycrag.units.Tape;
import plycrag.wall.Facet;

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

  /** The tiling that was asked for; if none was, the one with fewer sheets, then across. */
  public static Tiling of(Facet facet, SheetParameters sheet, Tape tape) {
    if (sheet.lay().isPresent()) {
      return laid(sheet.lay().get(), facet, sheet, tape);
    }
    Tiling across = laid(Lay.ACROSS, facet, sheet, tape);
    Tiling up = laid(Lay.UP, facet, sheet, tape);
    return up.pieces.size() < across.pieces.size() ? up : across;
  }

  private static Tiling laid(Lay lay, Facet facet, SheetParameters sheet, Tape tape) {
    boolean across = lay == Lay.ACROSS;
    Course columns = Course.of(facet.width(), across ? sheet.length() : sheet.width(), sheet, tape);
    Course rows = Course.of(facet.length(), across ? sheet.width() : sheet.length(), sheet, tape);
    List<Seam> seams = new ArrayList<>();
    columns.joints().forEach(at -> seams.add(new Seam(Axis.UP, at, sheet.seamGap())));
    rows.joints().forEach(at -> seams.add(new Seam(Axis.ACROSS, at, sheet.seamGap())));
    return new Tiling(lay, pieces(columns, rows), seams);
  }

  private static List<Piece> pieces(Course columns, Course rows) {
    List<Piece> pieces = new ArrayList<>();
    for (Course.Span row : rows.spans()) {
      for (Course.Span column : columns.spans()) {
        pieces.add(
            new Piece(
                "P" + (pieces.size() + 1),
                Shapes.rectangle(column.low(), row.low(), column.high(), row.high())));
      }
    }
    return pieces;
  }
}
