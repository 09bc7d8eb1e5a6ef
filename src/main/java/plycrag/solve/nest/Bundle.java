package plycrag.solve.nest;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;

/**
 * A rectangle to be cut, with the blanks that lie in it.
 *
 * @param blanks where each lies in the rectangle, whose lower left corner is the origin
 * @param width along the sheets' length, mm
 * @param height across it, mm
 * @param number of the first blank in it
 */
record Bundle(List<LaidBlank> blanks, double width, double height, int number) {
  Bundle {
    blanks = List.copyOf(blanks);
  }

  /** One blank alone, the sheets' length lying along x. */
  static Bundle of(Blank blank, int number, boolean mirrored) {
    Placement straight = new Placement(mirrored, Turn.NONE, 0, 0);
    Placement turned = blank.lengthAcross() ? straight : straight.turned(Turn.THREE_QUARTERS);
    Envelope box = turned.of(blank.outline()).getEnvelopeInternal();
    Placement placed = turned.moved(-box.getMinX(), -box.getMinY());
    return new Bundle(
        List.of(new LaidBlank(blank.mark(), placed)),
        Shapes.onGrid(box.getWidth()),
        Shapes.onGrid(box.getHeight()),
        number);
  }

  /** Where its blanks lie once it is turned and its lower left corner lies at a place. */
  List<LaidBlank> at(Turn turn, double x, double y) {
    double left = Math.min(0, turn.x(width, height));
    double low = Math.min(0, turn.y(width, height));
    return blanks.stream()
        .map(
            blank ->
                new LaidBlank(
                    blank.mark(), blank.placement().turned(turn).moved(x - left, y - low)))
        .toList();
  }
}
