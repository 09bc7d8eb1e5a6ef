package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Paragraph;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.drawing.flat.RecessWords;
import plycrag.drawing.pen.ViewKind;
import plycrag.layout.Layout;
import plycrag.layout.sheets.LaidSheet;
import plycrag.lists.MarkingOut;

/** How frames are joined and sheets are marked out: the parts one by one, before they meet. */
final class Making {
  private final CheckedLayout checked;
  private final Figures figures;
  private final Layout layout;
  private final Table markingOut;

  Making(CheckedLayout checked, Figures figures) {
    this.checked = checked;
    this.figures = figures;
    this.layout = checked.layout();
    this.markingOut = MarkingOut.of(checked);
  }

  List<Block> frame() {
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(
        figures.ofParts(ViewKind.FRAME, "The frame, laid flat: marks as in the cut list."));
    blocks.addAll(figures.of(ViewKind.FOLD, "How the two frames meet, and how the saw is set."));
    blocks.addAll(figures.of(ViewKind.CORNER, "How the two walls meet, and how the saw is set."));
    blocks.add(Listings.markingOut("Marking out the frame", rows(row -> !isOnSheet(row))));
    blocks.add(Listings.joints(checked));
    blocks.addAll(JointPlaces.of(checked));
    blocks.addAll(Listings.gussets(checked));
    return blocks;
  }

  List<Block> sheets() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Cautions.drilling());
    RecessWords.of(layout.wall()).ifPresent(words -> blocks.add(recesses(words)));
    blocks.add(Listings.pieces(checked));
    for (LaidSheet sheet : layout.sheets()) {
      String mark = sheet.mark();
      blocks.addAll(
          figures.of(
              ViewKind.SHEET_SAWING,
              mark,
              "How the sheet comes apart: cuts in order, offcuts with their sizes."));
      blocks.addAll(figures.ofParts(ViewKind.SHEET, mark, "Sheet " + mark + ": where to drill."));
      blocks.add(
          Listings.markingOut(
              "Marking out sheet " + mark, rows(row -> row.get(0).text().equals(mark))));
    }
    return blocks;
  }

  private static Block recesses(String words) {
    return new Paragraph(
        words
            + " The router cuts them from behind. Measure what remains at the first, with an insert"
            + " in it: a sheet thinner than stated, or a deeper recess, leaves less to hold the"
            + " flange.");
  }

  private interface RowTest {
    boolean fits(List<Cell> row);
  }

  private List<List<Cell>> rows(RowTest test) {
    return markingOut.rows().stream().filter(test::fits).toList();
  }

  private boolean isOnSheet(List<Cell> row) {
    return layout.sheets().stream().anyMatch(sheet -> sheet.mark().equals(row.get(0).text()));
  }
}
