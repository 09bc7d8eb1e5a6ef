package plycrag.machining;

import plycrag.document.Xy;
import plycrag.solve.nest.StockSheet;
import plycrag.wall.machine.Machine.Origin;

/**
 * Where a program's X and Y are zero on a sheet.
 *
 * @param corner of the sheet as it lies on the machine
 * @param x of that corner from the lower left one, mm
 * @param y likewise
 */
record SheetOrigin(Origin corner, double x, double y) {

  static SheetOrigin of(Origin corner, StockSheet sheet) {
    boolean right = corner == Origin.LOWER_RIGHT || corner == Origin.UPPER_RIGHT;
    boolean upper = corner == Origin.UPPER_LEFT || corner == Origin.UPPER_RIGHT;
    return new SheetOrigin(corner, right ? sheet.width() : 0, upper ? sheet.height() : 0);
  }

  /** A place counted from the sheet's lower left corner, counted from here. */
  Xy from(double sheetX, double sheetY) {
    return new Xy(sheetX - x, sheetY - y);
  }

  /** The corner in words. */
  String words() {
    return switch (corner) {
      case LOWER_LEFT -> "lower left";
      case LOWER_RIGHT -> "lower right";
      case UPPER_LEFT -> "upper left";
      case UPPER_RIGHT -> "upper right";
    };
  }
}
