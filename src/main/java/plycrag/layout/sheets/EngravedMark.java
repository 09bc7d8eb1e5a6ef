package plycrag.layout.sheets;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.solve.nest.Placement;

/**
 * What is to be engraved in a piece, so that it stands upright on the wall, seen from the face it
 * is engraved in. Every letter has a cell of its own, two thirds as wide as high, and a third of
 * the height lies between two.
 *
 * @param piece the piece's mark
 * @param text capitals, digits, spaces and {@code . - _}
 * @param height of the letters, mm
 * @param corner where the first letter begins, in the facet's (u, v)
 * @param placement of the piece; where its back lies up, u runs to the left
 */
public record EngravedMark(
    String piece, String text, double height, Coordinate corner, Placement placement) {
  /** From letter to letter, in heights. */
  public static final double PITCH = 1;

  /** How wide a letter is, in heights. */
  public static final double LETTER = 2.0 / 3;

  /** How long a text is, mm. */
  static double width(String text, double height) {
    return (PITCH * (text.length() - 1) + LETTER) * height;
  }

  /** Where a place of the text lies on the sheet, counted from its lower left corner, mm. */
  public Coordinate at(double across, double up) {
    double u = placement.mirrored() ? corner.x - across : corner.x + across;
    return placement.of(new Coordinate(u, corner.y + up));
  }

  /** The ways of a tool through its letters on the sheet, each through two places or more, mm. */
  public List<List<Coordinate>> strokes() {
    return StrokeFont.strokes(text, height).stream()
        .map(stroke -> stroke.points().stream().map(point -> at(point.x, point.y)).toList())
        .toList();
  }

  /** The smallest box around it on the sheet, mm. */
  public Envelope box() {
    return new Envelope(at(0, 0), at(width(text, height), height));
  }
}
