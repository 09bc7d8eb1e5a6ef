package plycrag.wall.machine;

import java.util.Optional;

/**
 * Where a program stops for another tool.
 *
 * @param height above the sheet, so that a hand gets at the spindle, mm
 * @param x from where the programs' X is zero, mm; empty where that is zero, or where the machine
 *     goes of its own accord
 * @param y likewise
 * @param offsets whether the machine is told to count with each tool's length (G43)
 */
public record ChangePlace(double height, Optional<Double> x, Optional<Double> y, boolean offsets) {}
