package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.sheets.AlikeSheets;
import plycrag.layout.sheets.CoverStrip;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.OffcutPart;
import plycrag.layout.sheets.OffcutParts;
import plycrag.solve.nest.SheetCutting.SawCut;
import plycrag.wall.machine.SheetCuttingRules.CutWith;

/**
 * What is laid on which sheet and how it comes apart: for each sheet a row for itself, one for each
 * piece, one for each saw cut in order, one for each offcut, one for each cover strip and gusset
 * that an offcut yields. Those that no offcut takes lie on further sheets, whose rows come last and
 * name none.
 */
public final class SheetList {
  private static final List<String> COLUMNS =
      List.of(
          "sheet",
          "same_as",
          "what",
          "order",
          "piece",
          "facet",
          "x_mm",
          "y_mm",
          "turn_deg",
          "length_mm",
          "width_mm",
          "note");

  private static final int UPRIGHT = 90;

  private final Layout layout;
  private final AlikeSheets alike;
  private final OffcutParts offcuts;
  private final List<List<Cell>> rows = new ArrayList<>();

  private SheetList(Layout layout) {
    this.layout = layout;
    this.alike = new AlikeSheets(layout.sheets());
    this.offcuts = layout.offcuts();
  }

  /**
   * The plan for a spreadsheet. Places are lower left corners on the sheet as it lies; length runs
   * along x and width along y. A cut's place is its kerf's; its length runs as it is turned, its
   * width is the kerf. A router's cuts have no order and are left out.
   */
  public static Table of(CheckedLayout checked) {
    SheetList list = new SheetList(checked.layout());
    checked.layout().sheets().forEach(list::add);
    list.addFurther();
    return new Table("Sheet plan", COLUMNS, list.rows);
  }

  private void add(LaidSheet sheet) {
    String atHand = sheet.stock().kind().isAtHand() ? "at hand, " : "";
    Envelope whole = new Envelope(0, sheet.stock().width(), 0, sheet.stock().height());
    String words = atHand + sheet.faceUp().word() + " face up";
    add(sheet, "sheet", List.of(Cell.of(""), Cell.of(""), Cell.of("")), whole, 0, words);
    sheet.pieces().forEach(laid -> add(sheet, laid));
    if (layout.wall().nesting().cutWith() == CutWith.SAW) {
      addCuts(sheet);
    }
    for (Envelope offcut : sheet.stock().cutting().offcuts()) {
      add(sheet, "offcut", List.of(Cell.of(""), Cell.of(""), Cell.of("")), offcut, 0, "");
    }
    offcuts.of(sheet).forEach(part -> add(part, sheet.mark()));
  }

  private void addFurther() {
    offcuts.parts().stream().filter(part -> part.sheet().isEmpty()).forEach(part -> add(part, ""));
  }

  private void add(OffcutPart part, String sheet) {
    for (CoverStrip strip : offcuts.strips()) {
      if (strip.parts().contains(part)) {
        String joined = strip.parts().size() > 1 ? ", a length of " + strip.mark() : "";
        add(part, sheet, "strip", strip.facet(), "cover strip " + strip.over() + joined);
      }
    }
    offcuts
        .gusset(part.mark())
        .ifPresent(
            laid -> {
              String over = "gusset over " + String.join(", ", laid.gusset().members());
              add(part, sheet, "gusset", "", over);
            });
  }

  private void add(OffcutPart part, String sheet, String what, String facet, String words) {
    List<Cell> which = List.of(Cell.of(""), Cell.of(part.mark()), Cell.of(facet));
    String note = words + (sheet.isEmpty() ? ", from a further sheet" : "");
    int turn = part.place().getWidth() >= part.place().getHeight() ? 0 : UPRIGHT;
    add(List.of(Cell.of(sheet), Cell.of(""), Cell.of(what)), which, part.place(), turn, note);
  }

  private void add(LaidSheet sheet, LaidPiece laid) {
    String shape = laid.piece().blank().isRectangle() ? "" : "then cut to its outline";
    List<Cell> which = List.of(Cell.of(""), Cell.of(laid.piece().mark()), Cell.of(laid.facet()));
    add(sheet, "piece", which, laid.box(), laid.placement().turn().degrees(), shape);
  }

  private void addCuts(LaidSheet sheet) {
    double kerf = layout.wall().nesting().gap();
    List<SawCut> cuts = sheet.stock().cutting().cuts();
    for (int order = 1; order <= cuts.size(); order++) {
      SawCut cut = cuts.get(order - 1);
      double x = cut.upright() ? cut.at() : cut.from();
      double y = cut.upright() ? cut.from() : cut.at();
      Envelope box = new Envelope(x, x + cut.length(), y, y + kerf);
      List<Cell> which = List.of(Cell.of(order), Cell.of(""), Cell.of(""));
      add(sheet, "cut", which, box, cut.upright() ? UPRIGHT : 0, "");
    }
  }

  private void add(
      LaidSheet sheet, String what, List<Cell> which, Envelope box, int turn, String note) {
    String same = alike.earlier(sheet).map(LaidSheet::mark).orElse("");
    List<Cell> first = List.of(Cell.of(sheet.mark()), Cell.of(same), Cell.of(what));
    add(first, which, box, turn, note);
  }

  private void add(List<Cell> first, List<Cell> which, Envelope box, int turn, String note) {
    List<Cell> row = new ArrayList<>(first);
    row.addAll(which);
    row.add(Cell.mm(box.getMinX()));
    row.add(Cell.mm(box.getMinY()));
    row.add(Cell.of(turn));
    row.add(Cell.mm(box.getWidth()));
    row.add(Cell.mm(box.getHeight()));
    row.add(Cell.of(note));
    rows.add(row);
  }
}
