package plycrag.machining;

import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Machine.ZZero;

/**
 * The heights of a program, Z in mm from its zero.
 *
 * @param top of the sheet
 * @param clear between holes
 * @param safe first and last
 * @param change where tools are changed
 * @param breakthrough how far a through hole goes on below the sheet, mm
 */
record DrillHeights(double top, double clear, double safe, double change, double breakthrough) {

  static DrillHeights of(Machine machine, double thickness) {
    double top = machine.zero().z() == ZZero.SPOILBOARD ? thickness : 0;
    return new DrillHeights(
        top,
        top + machine.heights().clearance(),
        top + machine.heights().safe(),
        top
            + Math.max(
                machine.heights().safe(), machine.equipment().controller().changePlace().height()),
        machine.heights().breakthrough());
  }

  /** The bottom of a hole of a depth in a sheet of a thickness. */
  double bottom(double depth, double thickness) {
    boolean through = depth >= thickness;
    return top - depth - (through ? breakthrough : 0);
  }
}
