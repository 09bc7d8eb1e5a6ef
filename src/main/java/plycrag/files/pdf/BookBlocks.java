package plycrag.files.pdf;

import java.util.List;
import plycrag.document.Book;

/**
 * Sets the parts of sections.
 *
 * @param column what is filled
 */
record BookBlocks(Column column) {
  private static final double GAP = 3;

  /** No line is longer: longer ones are hard to follow (as on the web page), mm. */
  private static final double MEASURE = 160;

  private static final double INDENT = 7;
  private static final double TICK = 3.4;
  private static final double BAR = 1.2;

  /** How much of a part must stand on the page where it begins, mm. */
  double start(Book.Block block) {
    if (block instanceof Book.Figure figure) {
      return new BookFigure(column, figure).height();
    }
    if (block instanceof Book.Listing listing) {
      return new BookTable(column, listing.table()).start();
    }
    return block instanceof Book.Caution caution ? height(caution) : 2 * Letters.TEXT.leading();
  }

  /** Sets a part. */
  void set(Book.Block block) {
    if (block instanceof Book.Paragraph paragraph) {
      paragraph(paragraph.text());
    } else if (block instanceof Book.Caution caution) {
      caution(caution);
    } else if (block instanceof Book.Checklist checklist) {
      checklist.items().forEach(item -> item(item, true));
    } else if (block instanceof Book.Points points) {
      points.items().forEach(item -> item(item, false));
    } else if (block instanceof Book.Listing listing) {
      new BookTable(column, listing.table()).set();
    } else if (block instanceof Book.Link link) {
      paragraph(link.words() + ": " + link.path());
    } else {
      new BookFigure(column, (Book.Figure) block).set();
    }
    column.gap(GAP);
  }

  private double left() {
    return column.paper().left();
  }

  private List<String> lines(Letters letters, String text, double indent) {
    double measure = Math.min(MEASURE, column.paper().column()) - indent;
    return new LineBreaker(column.font(), letters).lines(text, measure);
  }

  /** At least two lines of it stand together at the foot of a page. */
  private void paragraph(String text) {
    List<String> lines = lines(Letters.TEXT, text, 0);
    column.room(Math.min(2, lines.size()) * Letters.TEXT.leading());
    column.lines(Letters.TEXT, left(), lines);
  }

  private double height(Book.Caution caution) {
    int lines = lines(Letters.STRONG, caution.word(), BAR + GAP).size();
    return (lines + lines(Letters.TEXT, caution.text(), BAR + GAP).size()) * Letters.TEXT.leading();
  }

  private void caution(Book.Caution caution) {
    double height = height(caution);
    column.room(height);
    double indent = BAR + GAP;
    Leaf leaf = column.leaf();
    double top = column.y();
    column.lines(Letters.STRONG, left() + indent, lines(Letters.STRONG, caution.word(), indent));
    column.lines(Letters.TEXT, left() + indent, lines(Letters.TEXT, caution.text(), indent));
    double low = leaf == column.leaf() ? column.y() : column.paper().low();
    leaf.bar(new Leaf.Box(left(), low, BAR, top - low));
  }

  /** An item with its box to tick, or with a dash. */
  private void item(String text, boolean box) {
    List<String> lines = lines(Letters.TEXT, text, INDENT);
    column.room(Math.min(3, lines.size()) * Letters.TEXT.leading());
    double foot = column.y() - Letters.TEXT.drop();
    if (box) {
      column.leaf().box(new Leaf.Box(left() + 0.2, foot - 0.4, TICK, TICK));
    } else {
      column.leaf().words(Letters.TEXT, left() + 1, foot, "–");
    }
    column.lines(Letters.TEXT, left() + INDENT, lines);
    column.gap(1);
  }
}
