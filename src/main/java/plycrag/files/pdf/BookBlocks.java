package plycrag.files.pdf;

import java.util.List;
import plycrag.document.Book;

/** Sets the parts of sections. */
final class BookBlocks {
  private static final double GAP = 3;

  /** No line is longer: longer ones are hard to follow (as on the web page), mm. */
  private static final double MEASURE = 160;

  private static final double INDENT = 7;
  private static final double TICK = 3.4;
  private static final double BAR = 1.2;

  private final Column column;

  /**
   * Sets into one column.
   *
   * @param column what is filled
   */
  BookBlocks(Column column) {
    this.column = column;
  }

  /** How much of a part must stand on the page where it begins, mm. */
  double start(Book.Block block) {
    if (block instanceof Book.Figure figure) {
      return new BookFigure(column, figure).height();
    }
    if (block instanceof Book.Listing listing) {
      return new BookTable(column, listing.table()).start();
    }
    if (block instanceof Book.Facts facts) {
      return new BookFacts(column, facts).height();
    }
    if (block instanceof Book.Step step) {
      return new BookStep(column, step).height();
    }
    return block instanceof Book.Caution caution ? height(caution) : 2 * TextStyle.TEXT.leading();
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
    } else if (block instanceof Book.Facts facts) {
      new BookFacts(column, facts).set();
    } else if (block instanceof Book.Step step) {
      new BookStep(column, step).set();
    } else {
      new BookFigure(column, (Book.Figure) block).set();
    }
    column.gap(GAP);
  }

  private double left() {
    return column.paper().left();
  }

  private List<String> lines(TextStyle style, String text, double indent) {
    double measure = Math.min(MEASURE, column.paper().column()) - indent;
    return new LineBreaker(column.font(), style).lines(text, measure);
  }

  /** At least two lines of it stand together at the foot of a page. */
  private void paragraph(String text) {
    List<String> lines = lines(TextStyle.TEXT, text, 0);
    column.room(Math.min(2, lines.size()) * TextStyle.TEXT.leading());
    column.lines(TextStyle.TEXT, left(), lines);
  }

  private double height(Book.Caution caution) {
    int lines = lines(TextStyle.STRONG, caution.word(), BAR + GAP).size();
    return (lines + lines(TextStyle.TEXT, caution.text(), BAR + GAP).size())
        * TextStyle.TEXT.leading();
  }

  private void caution(Book.Caution caution) {
    double height = height(caution);
    column.room(height);
    double indent = BAR + GAP;
    Leaf leaf = column.leaf();
    double top = column.y();
    column.lines(
        TextStyle.STRONG, left() + indent, lines(TextStyle.STRONG, caution.word(), indent));
    column.lines(TextStyle.TEXT, left() + indent, lines(TextStyle.TEXT, caution.text(), indent));
    double low = leaf == column.leaf() ? column.y() : column.paper().low();
    leaf.bar(new Leaf.Box(left(), low, BAR, top - low));
  }

  /** An item with its box to tick, or with a dash. */
  private void item(String text, boolean box) {
    List<String> lines = lines(TextStyle.TEXT, text, INDENT);
    column.room(Math.min(3, lines.size()) * TextStyle.TEXT.leading());
    double foot = column.y() - TextStyle.TEXT.drop();
    if (box) {
      column.leaf().box(new Leaf.Box(left() + 0.2, foot - 0.4, TICK, TICK));
    } else {
      column.leaf().words(TextStyle.TEXT, left() + 1, foot, "–");
    }
    column.lines(TextStyle.TEXT, left() + INDENT, lines);
    column.gap(1);
  }
}
