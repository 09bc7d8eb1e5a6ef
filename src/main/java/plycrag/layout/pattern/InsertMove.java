package plycrag.layout.pattern;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Direction;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Fixity;
import plycrag.units.Tape;

/** The shortest move of a column or a row that would clear an insert, in words. */
public final class InsertMove {
  private final Axis axis;
  private final double distance;

  /**
   * @param axis along which to move
   * @param distance signed, to the right or up, mm
   */
  public InsertMove(Axis axis, double distance) {
    this.axis = axis;
    this.distance = distance;
  }

  /**
   * Clear of a member, square to the way it runs.
   *
   * @param needed least distance from the insert's centre to the member, mm
   */
  static InsertMove clearOf(Member member, Insert insert, double needed) {
    Axis axis = member.role().isUpright() ? Axis.ACROSS : Axis.UP;
    Envelope box = member.box();
    double place = axis.low(insert.centre().getEnvelopeInternal());
    double back = axis.low(box) - needed - place;
    double on = axis.high(box) + needed - place;
    return new InsertMove(axis, on < -back ? on : back);
  }

  /**
   * Further off a member that slants.
   *
   * @param away how much further, mm
   */
  static InsertMove off(Member member, Insert insert, double away) {
    Direction across = member.direction().across();
    double beside = across.along(insert.centre()) - across.along(member.footprint().getCentroid());
    double signed = beside < 0 ? -away : away;
    boolean isAcross = Math.abs(across.u()) >= Math.abs(across.v());
    return isAcross
        ? new InsertMove(Axis.ACROSS, signed / across.u())
        : new InsertMove(Axis.UP, signed / across.v());
  }

  /**
   * Clear of a point, along the axis on which it is further away.
   *
   * @param needed least distance between the centres, mm
   */
  public static InsertMove clearOf(Point point, Insert insert, double needed) {
    double across = insert.centre().getX() - point.getX();
    double up = insert.centre().getY() - point.getY();
    boolean isAcross = Math.abs(across) >= Math.abs(up);
    double along = isAcross ? across : up;
    double beside = isAcross ? up : across;
    double far = Math.sqrt(needed * needed - beside * beside) - Math.abs(along);
    return new InsertMove(isAcross ? Axis.ACROSS : Axis.UP, along < 0 ? -far : far);
  }

  /** {@code move column 3 of zone feet left by 40 mm}. */
  public String words(Insert insert, Tape tape) {
    if (insert.column() == 0) {
      return "move it " + way(distance) + " by " + amount(tape);
    }
    String line = axis == Axis.ACROSS ? insert.columnName() : insert.rowName();
    return "move " + line + " " + way(distance) + " by " + amount(tape);
  }

  /** The same, and what else would do where the member itself can be moved. */
  String words(Insert insert, Member member, Tape tape) {
    String first = words(insert, tape);
    if (member.fixity() != Fixity.FREE) {
      return first;
    }
    String name = member.role().word() + " " + member.mark();
    return first + ", or " + name + " " + way(-distance) + " by " + amount(tape);
  }

  private String amount(Tape tape) {
    return tape.text(tape.snapUp(Math.abs(distance)));
  }

  private String way(double signed) {
    if (axis == Axis.ACROSS) {
      return signed < 0 ? "left" : "right";
    }
    return signed < 0 ? "down" : "up";
  }
}
