package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Trig;

/**
 * An arc in the XY plane, or a helix about its centre.
 *
 * @param from where it begins
 * @param to where it ends; straight above or below the beginning for a full turn
 * @param centre of both ends
 * @param left whether it turns counter-clockwise
 */
record Arc(TipPlace from, TipPlace to, Coordinate centre, boolean left) {
  private static final double FULL_TURN = 360;

  /** An arc by its centre. */
  static Arc about(TipPlace from, TipPlace to, Coordinate centre, boolean left)
      throws ReadingException {
    double before = centre.distance(from.coordinate());
    double after = centre.distance(to.coordinate());
    require(before > Accuracy.OUT_OF_ROUND, "an arc without radius");
    require(Math.abs(before - after) <= Accuracy.OUT_OF_ROUND, "an arc's ends differ in radius");
    return new Arc(from, to, centre, left);
  }

  /** An arc by its radius; negative for the longer of the two (NISTIR 6556, radius format). */
  static Arc within(TipPlace from, TipPlace to, double radius, boolean left)
      throws ReadingException {
    double chord = from.beside(to);
    require(!from.isAbove(to), "an arc by its radius that ends where it began");
    double half = chord / 2;
    require(
        half <= Math.abs(radius) + Accuracy.OUT_OF_ROUND,
        "an arc's radius is too small for its ends");
    double off = Math.sqrt(Math.max(0, radius * radius - half * half)) / chord;
    double side = left == radius > 0 ? off : -off;
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    Coordinate centre =
        new Coordinate(from.x() + dx / 2 - side * dy, from.y() + dy / 2 + side * dx);
    return new Arc(from, to, centre, left);
  }

  /** Spots on the arc, both ends among them. */
  List<TipPlace> way() {
    double turn = turn();
    double radius = centre.distance(from.coordinate());
    double widest = Math.toDegrees(2 * Math.sqrt(2 * Accuracy.CHORD / radius));
    int chords = (int) Math.ceil(Math.max(Math.abs(turn) / widest, 1));
    double grown = centre.distance(to.coordinate()) / radius - 1;
    List<TipPlace> way = new ArrayList<>();
    way.add(from);
    for (int at = 1; at < chords; at++) {
      double part = (double) at / chords;
      way.add(turned(part * turn, 1 + part * grown, from.z() + part * (to.z() - from.z())));
    }
    way.add(to);
    return way;
  }

  private TipPlace turned(double degrees, double scale, double height) {
    double cos = scale * Trig.cos(degrees);
    double sin = scale * Trig.sin(degrees);
    double dx = from.x() - centre.x;
    double dy = from.y() - centre.y;
    return new TipPlace(centre.x + cos * dx - sin * dy, centre.y + sin * dx + cos * dy, height);
  }

  /** How far it turns, degrees, positive counter-clockwise. */
  private double turn() {
    if (from.isAbove(to)) {
      return left ? FULL_TURN : -FULL_TURN;
    }
    double turn = ViewTurn.about(centre, from.coordinate(), to.coordinate());
    if (left) {
      return turn > 0 ? turn : turn + FULL_TURN;
    }
    return turn < 0 ? turn : turn - FULL_TURN;
  }
}
