package plycrag.wall.machine;

import java.util.List;
import java.util.Optional;
import plycrag.geometry.Tolerance;
import plycrag.units.LengthUnit;

/**
 * The router.
 *
 * @param zero where its axes are zero
 * @param heights above and below the sheet
 * @param spindle how it is driven where no tool says otherwise
 * @param work what else than holes for inserts it makes
 * @param equipment what it is and holds
 */
public record Machine(Zero zero, Heights heights, Spindle spindle, Work work, Equipment equipment) {

  /**
   * Where the axes are zero.
   *
   * @param z where Z is
   * @param corner the corner of the sheet where X and Y are
   */
  public record Zero(ZZero z, Origin corner) {}

  /**
   * Where the tool goes above and below the sheet.
   *
   * @param breakthrough how far a through hole goes on below the sheet, mm
   * @param clearance above the sheet's top: between holes, mm
   * @param safe above the sheet's top: first and last, over clamps, mm
   */
  public record Heights(double breakthrough, double clearance, double safe) {}

  /**
   * How the spindle is driven where no tool says otherwise.
   *
   * @param speed revolutions per minute
   * @param plungeFeed mm/min
   * @param dwell from its start to the first hole, seconds
   */
  public record Spindle(double speed, double plungeFeed, double dwell) {}

  /**
   * What else than holes for inserts the machine makes.
   *
   * @param screwHoles the clearance holes for screws; empty if none are drilled
   * @param marks how pieces are marked; empty if by hand
   * @param pins what a sheet is turned over on that is worked on both faces
   * @param routing how pieces are cut from their sheets
   */
  public record Work(
      Optional<ClearanceHoles> screwHoles,
      Optional<MarkEngraving> marks,
      Pins pins,
      Routing routing) {}

  /**
   * What the machine is and holds.
   *
   * @param limits what it can do
   * @param controller what its controller understands
   * @param tools what it holds; where none are told, a drill for every hole
   * @param keepOuts where no tool may come on any sheet
   */
  public record Equipment(
      MachineLimits limits, Controller controller, List<Tool> tools, List<KeepOut> keepOuts) {

    /** Copies the lists. */
    public Equipment {
      tools = List.copyOf(tools);
      keepOuts = List.copyOf(keepOuts);
    }
  }

  /**
   * By how much Z zero is raised for a run above the work: whatever stands on the sheet is cleared,
   * by the least height between holes where nothing is told to stand there.
   *
   * @param deepest how far below the sheet's top a tool goes, mm
   * @return whole millimetres, or tenths of an inch where programs are in inches, in mm
   */
  public double raisedToTry(double deepest) {
    double highest = equipment.keepOuts().stream().mapToDouble(KeepOut::rise).reduce(0, Math::max);
    double raised = deepest + Math.max(highest, heights.clearance());
    double step =
        equipment.controller().unit() == LengthUnit.MM ? 1 : LengthUnit.IN.millimetres() / 10;
    return Tolerance.wholeUp(raised / step) * step;
  }

  /** Where Z is zero. */
  public enum ZZero {
    /** On the table that the sheet lies on. */
    SPOILBOARD,
    /** On top of the sheet. */
    SHEET_TOP
  }

  /** A corner of the sheet as it lies on the machine; X goes right and Y up from any of them. */
  public enum Origin {
    /** Left and low. */
    LOWER_LEFT,
    /** Right and low. */
    LOWER_RIGHT,
    /** Left and high. */
    UPPER_LEFT,
    /** Right and high. */
    UPPER_RIGHT
  }
}
