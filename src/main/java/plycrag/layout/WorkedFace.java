package plycrag.layout;

import java.util.List;
import plycrag.params.MarkParameters;
import plycrag.wall.Wall;

/**
 * What a machine does to one face of a sheet in one setting up.
 *
 * <p>A sheet is worked on the face that lies up. Where marks are to stand behind the wall and its
 * front lies up, it is worked on both: first on its back, where two holes for pins are drilled and
 * marks are engraved; then it is turned over from left to right, about the upright line in its
 * middle, on which the pins stand, so that they find their holes again.
 *
 * @param sheet as it lies then, with the holes that are made then
 * @param marks to be engraved
 * @param order of the settings up
 */
public record WorkedFace(LaidSheet sheet, List<PartMark> marks, Order order) {
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
  static List<WorkedFace> of(Wall wall, LaidSheet sheet) {
    boolean both =
        sheet.faceUp() == Face.FRONT
            && wall.machine().marks().filter(MarkParameters::behind).isPresent();
    return both ? both(wall, sheet) : List.of(only(wall, sheet));
  }

  private static WorkedFace only(Wall wall, LaidSheet sheet) {
    return new WorkedFace(sheet, PartMarks.of(wall, sheet), Order.ONLY);
  }

  private static List<WorkedFace> both(Wall wall, LaidSheet sheet) {
    LaidSheet back = sheet.turnedOver();
    List<PartMark> marks = PartMarks.of(wall, back);
    LaidSheet pinned =
        new LaidSheet(back.stock(), Face.BACK, back.pieces(), PinHoles.of(wall, sheet));
    return List.of(
        new WorkedFace(pinned, marks, Order.FIRST), new WorkedFace(sheet, List.of(), Order.SECOND));
  }

  /** Whether pieces may be cut out: what is cut out cannot be turned over. */
  public boolean isLast() {
    return order != Order.FIRST;
  }

  /** Where the sheet is turned over, counted from its left edge, mm. */
  public double axis() {
    return sheet.stock().width() / 2;
  }
}
