package plycrag.check.making;

import plycrag.units.Decimal;
import plycrag.wall.machine.SpeedRange;
import plycrag.wall.machine.Tool;

/** Tells of a tool that is driven outside of what it or the spindle bears. */
final class DrivenSpeed {
  private DrivenSpeed() {}

  static String words(Tool tool, SpeedRange spindle) {
    return tool.name()
        + " would turn at "
        + rpm(tool.drive().speed())
        + "; it bears "
        + range(tool.drive().speeds())
        + " and the spindle turns at "
        + range(spindle);
  }

  private static String range(SpeedRange range) {
    return Decimal.of(range.least(), 0) + " to " + rpm(range.greatest());
  }

  private static String rpm(double speed) {
    return Decimal.of(speed, 0) + " rpm";
  }
}
