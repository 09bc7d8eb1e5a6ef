package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.List;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.wall.Wall;
import plycrag.wall.machine.MarkEngraving;

/**
 * What a machine does to one face of a sheet in one setting up.
 *
 * <p>A sheet is worked on the face that lies up. Where its front lies up and marks are to stand
 * behind the wall, or flanges of inserts in recesses in its back, it is worked on both: first on
 * its back, where two holes for pins are drilled, recesses cut and marks engraved; then it is
 * turned over from left to right, about the upright line in its middle, on which the pins stand, so
 * that they find their holes again.
 *
 * @param sheet as it lies then, with the holes that are made then
 * @param marks to be engraved
 * @param order of the settings up
 */
public record WorkedFace(LaidSheet sheet, List<EngravedMark> marks, Order order) {
  /** When a face is worked. */
  public enum Order {
    /** There is no other. */
    ONLY,
    /** Before the sheet is turned over. */
    FIRST,
    /** After that. */
    SECOND
  }

  /** Copies the marks. */
  public WorkedFace {
    marks = List.copyOf(marks);
  }

  /** The faces of a sheet in the order in which they are worked. */
  public static List<WorkedFace> of(Wall wall, LaidSheet sheet) {
    boolean behind = wall.machine().work().marks().filter(MarkEngraving::behind).isPresent();
    boolean recessed = wall.inserts().body().recess().isPresent() && !sheet.inserts().isEmpty();
    return sheet.faceUp() == SheetFace.FRONT && (behind || recessed)
        ? both(wall, sheet, behind)
        : List.of(only(wall, sheet));
  }

  private static WorkedFace only(Wall wall, LaidSheet sheet) {
    List<EngravedMark> marks = EngravedMarks.of(wall, sheet);
    boolean back = sheet.faceUp() == SheetFace.BACK;
    return new WorkedFace(back ? recessed(wall, sheet) : sheet, marks, Order.ONLY);
  }

  /** Recesses are cut in the setting in which the back lies up, with the holes if these are too. */
  private static LaidSheet recessed(Wall wall, LaidSheet back) {
    List<MachinedHole> all = new ArrayList<>(back.holes());
    all.addAll(Recesses.of(wall, back));
    return back.withHoles(all);
  }

  private static List<WorkedFace> both(Wall wall, LaidSheet sheet, boolean behind) {
    LaidSheet back = sheet.turnedOver();
    List<MachinedHole> first = new ArrayList<>(PinHoles.of(wall, sheet));
    first.addAll(Recesses.of(wall, back));
    List<EngravedMark> marks = EngravedMarks.of(wall, behind ? back : sheet);
    return List.of(
        new WorkedFace(back.withHoles(first), behind ? marks : List.of(), Order.FIRST),
        new WorkedFace(sheet, behind ? List.of() : marks, Order.SECOND));
  }

  /** Whether pieces may be cut out: what is cut out cannot be turned over. */
  public boolean isLast() {
    return order != Order.FIRST;
  }

  /**
   * How much of a sheet that is worked on both faces is enough to leave at its edges for pins, mm.
   */
  public static double pinMargin(Wall wall) {
    return PinHoles.margin(wall);
  }

  /**
   * Whether the pins let the sheet go on them in no other way than turned over from left to right.
   */
  public boolean fitsPinsOneWay(Wall wall) {
    List<MachinedHole> pins =
        order == Order.FIRST ? sheet.holes(Kind.PIN) : PinHoles.of(wall, sheet);
    return PinHoles.fitOneWay(pins, sheet.stock().height(), wall.machine().work().pins());
  }

  /** How far below the sheet's top a tool goes at most, mm; nowhere less than through the sheet. */
  public double deepest(Wall wall) {
    double through = wall.sheet().thickness();
    double deepest =
        sheet.holes().stream().mapToDouble(hole -> hole.bore().depth()).max().orElse(through);
    return Math.max(through, deepest) + wall.machine().heights().breakthrough();
  }

  /** Where the sheet is turned over, counted from its left edge, mm. */
  public double axis() {
    return sheet.stock().width() / 2;
  }
}
