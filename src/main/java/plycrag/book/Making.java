package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Figure;
import plycrag.document.Book.Paragraph;
import plycrag.document.Cell;
import plycrag.document.Drawing;
import plycrag.document.Table;
import plycrag.drawing.CornerDetail;
import plycrag.drawing.FoldDetail;
import plycrag.drawing.FrameView;
import plycrag.drawing.GussetView;
import plycrag.drawing.MarkingOut;
import plycrag.drawing.RecessWords;
import plycrag.drawing.SheetSawing;
import plycrag.drawing.SheetView;
import plycrag.layout.FacetLayout;
import plycrag.layout.LaidSheet;
import plycrag.layout.Layout;

/** How frames are joined and sheets are marked out: the parts one by one, before they meet. */
final class Making {
  private final CheckedLayout checked;
  private final Layout layout;
  private final Table markingOut;

  Making(CheckedLayout checked) {
    this.checked = checked;
    this.layout = checked.layout();
    this.markingOut = MarkingOut.of(checked);
  }

  List<Block> frame() {
    List<Block> blocks = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      Drawing drawing = FrameView.of(checked, facet);
      blocks.add(new Figure(drawing, "The frame, laid flat: marks as in the cut list.", true));
    }
    for (List<FacetLayout> run : layout.runs()) {
      for (int level = 1; level < run.size(); level++) {
        Drawing fold = FoldDetail.of(checked, run.get(level - 1), run.get(level));
        blocks.add(new Figure(fold, "How the two frames meet, and how the saw is set."));
      }
    }
    for (Drawing corner : CornerDetail.all(checked)) {
      blocks.add(new Figure(corner, "How the two walls meet, and how the saw is set."));
    }
    blocks.add(Listings.markingOut("Marking out the frame", rows(row -> !isOnSheet(row))));
    blocks.add(Listings.joints(checked));
    blocks.addAll(JointPlaces.of(checked));
    blocks.addAll(Listings.gussets(checked));
    for (Drawing gusset : GussetView.all(checked).values()) {
      String how = "Cut from an offcut, marked and drilled before it is screwed on.";
      blocks.add(new Figure(gusset, how));
    }
    return blocks;
  }

  List<Block> sheets() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Cautions.drilling());
    RecessWords.of(layout.wall()).ifPresent(words -> blocks.add(recesses(words)));
    blocks.add(Listings.pieces(checked));
    for (LaidSheet sheet : layout.sheets()) {
      if (SheetSawing.isNeeded(checked, sheet)) {
        String how = "How the sheet comes apart: cuts in order, offcuts with their sizes.";
        blocks.add(new Figure(SheetSawing.of(checked, sheet), how));
      }
      String caption = "Sheet " + sheet.mark() + ": where to drill.";
      blocks.add(new Figure(SheetView.of(checked, sheet), caption, true));
      blocks.add(
          Listings.markingOut(
              "Marking out sheet " + sheet.mark(),
              rows(row -> row.get(0).text().equals(sheet.mark()))));
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
