package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.drawing.pen.TitleLines;
import plycrag.layout.Layout;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.sheets.WorkedFace.Order;
import plycrag.units.Decimal;
import plycrag.wall.machine.SheetCuttingRules.CutWith;

/** What a drawing for cutting says of itself, so that nobody takes it for another. */
final class SheetCutWords {
  private SheetCutWords() {}

  /** A line each. */
  static List<String> of(CheckedLayout checked, WorkedFace face, String revision) {
    Layout layout = checked.layout();
    LaidSheet sheet = face.sheet();
    List<String> lines = new ArrayList<>();
    lines.add(layout.wall().name() + ", revision " + revision);
    lines.add("Sheet " + sheet.mark() + ", " + sheet.faceUp().word() + " face up" + order(face));
    lines.add(
        "Stock "
            + mm(sheet.stock().width())
            + " x "
            + mm(sheet.stock().height())
            + " x "
            + mm(layout.wall().sheet().thickness())
            + " thick, all in millimetres");
    lines.add(cut(layout, face));
    lines.add(TitleLines.support(checked) + ".");
    lines.add(TitleLines.BOULDERING);
    return List.copyOf(lines);
  }

  private static String order(WorkedFace face) {
    return switch (face.order()) {
      case ONLY -> "";
      case FIRST -> ", face 1 of 2, then turned over left to right";
      case SECOND -> ", face 2 of 2, turned over left to right";
    };
  }

  private static String cut(Layout layout, WorkedFace face) {
    if (face.order() == Order.FIRST) {
      return "Pieces are cut out after the sheet was turned over";
    }
    boolean router =
        layout.wall().nesting().cutWith() == CutWith.ROUTER
            || layout.wall().machine().work().routing().cuts();
    return router
        ? "Pieces lie " + mm(layout.wall().nesting().gap()) + " apart or more: for no wider cutter"
        : "Pieces are sawn, not routed";
  }

  private static String mm(double length) {
    return Decimal.of(length, 3);
  }
}
