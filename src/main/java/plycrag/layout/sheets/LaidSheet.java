package plycrag.layout.sheets;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.solve.nest.StockSheet;

/**
 * A stock sheet with its pieces and the holes to be made in them.
 *
 * @param stock the sheet as it lies on the machine
 * @param faceUp the face of its pieces that lies up
 * @param pieces what is cut from it, in the order of their marks
 * @param holes piece by piece, each row by row from its bottom, left to right
 */
public record LaidSheet(
    StockSheet stock, SheetFace faceUp, List<LaidPiece> pieces, List<MachinedHole> holes) {
  /** Copies the lists. */
  public LaidSheet {
    pieces = List.copyOf(pieces);
    holes = List.copyOf(holes);
  }

  /** The same turned over from left to right; its holes are where they come out. */
  LaidSheet turnedOver() {
    double width = stock.width();
    return new LaidSheet(
        stock,
        faceUp == SheetFace.FRONT ? SheetFace.BACK : SheetFace.FRONT,
        pieces.stream()
            .map(
                laid ->
                    new LaidPiece(laid.piece(), laid.facet(), laid.placement().turnedOver(width)))
            .toList(),
        holes.stream().map(hole -> hole.turnedOver(width)).toList());
  }

  /** The sheet's mark. */
  public String mark() {
    return stock.mark();
  }

  /** The holes for inserts alone. */
  public List<MachinedHole> inserts() {
    return holes(Kind.INSERT);
  }

  /** The holes of a kind alone. */
  public List<MachinedHole> holes(Kind kind) {
    return holes.stream().filter(hole -> hole.kind() == kind).toList();
  }

  /** The same with other holes. */
  LaidSheet withHoles(List<MachinedHole> others) {
    return new LaidSheet(stock, faceUp, pieces, others);
  }

  /** The whole sheet as it lies on the machine, mm. */
  public Envelope area() {
    return new Envelope(0, stock.width(), 0, stock.height());
  }

  /** The file name's stem of what is made for it: {@code sheet-S1-front}. */
  public String fileName() {
    return "sheet-" + mark() + "-" + faceUp.word();
  }
}
