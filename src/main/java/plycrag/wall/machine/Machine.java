package plycrag.wall.machine;

import java.util.List;
import java.util.Optional;

/**
 * The router.
 *
 * @param zZero where Z is zero
 * @param breakthrough how far a through hole goes on below the sheet, mm
 * @param clearanceHeight above the sheet's top: between holes, mm
 * @param safeHeight above the sheet's top: first and last, over clamps, mm
 * @param spindleSpeed revolutions per minute
 * @param plungeFeed mm/min
 * @param dwell from spindle start to the first hole, seconds
 * @param origin the corner of the sheet where X and Y are zero
 * @param screwHoles the clearance holes for screws; empty if none are drilled
 * @param marks how pieces are marked; empty if by hand
 * @param pins what a sheet is turned over on that is worked on both faces
 * @param limits what it can do
 * @param controller what its controller understands
 * @param routing how pieces are cut from their sheets
 * @param tools what it holds; where none are told, a drill for every hole
 * @param keepOuts where no tool may come on any sheet
 */
public record Machine(
    ZZero zZero,
    double breakthrough,
    double clearanceHeight,
    double safeHeight,
    double spindleSpeed,
    double plungeFeed,
    double dwell,
    Origin origin,
    Optional<ClearanceHoles> screwHoles,
    Optional<MarkEngraving> marks,
    Pins pins,
    MachineLimits limits,
    Controller controller,
    Routing routing,
    List<Tool> tools,
    List<KeepOut> keepOuts) {

  /** Copies the lists. */
  public Machine {
    tools = List.copyOf(tools);
    keepOuts = List.copyOf(keepOuts);
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
