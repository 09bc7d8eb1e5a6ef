package plycrag.files.pdf;

import java.util.List;
import plycrag.document.Book;

/** What stands around the text: stamp and foot on every page, and the list of contents. */
final class BookEdges {
  private static final double GAP = 4;
  private static final double PAD = 1.5;

  /** How far a contents' numbers stand from the left edge, mm: near enough to be read along. */
  static final double CONTENTS = 88;

  private final Book book;
  private final PdfFont font;
  private final double width;
  private final List<String> stamp;
  private final List<String> foot;

  BookEdges(Book book, PdfFont font, double width) {
    this.book = book;
    this.font = font;
    this.width = width;
    double column = width - 2 * BookPaper.MARGIN;
    this.stamp = new LineBreaker(font, TextStyle.STRONG).lines(book.stamp(), column - 2 * PAD);
    this.foot = new LineBreaker(font, TextStyle.TABLE).lines(book.footer(), column);
  }

  /** The paper, less what stands around the text. */
  BookPaper paper(double height) {
    double head = stamp.isEmpty() ? 0 : stampHeight() + GAP;
    double low = (foot.size() + 1) * TextStyle.TABLE.leading() + GAP + PAD;
    return new BookPaper(width, height, head, low);
  }

  private double stampHeight() {
    return stamp.size() * TextStyle.STRONG.leading() + 2 * PAD;
  }

  /** Puts stamp and foot on a page. */
  void set(Leaf leaf, BookPaper paper, String page) {
    if (!stamp.isEmpty()) {
      stamp(leaf, paper);
    }
    double y = paper.low() - GAP;
    leaf.rule(paper.left(), paper.right(), y);
    y -= PAD + TextStyle.TABLE.drop();
    double across = new LineBreaker(font, TextStyle.TABLE).width(page);
    leaf.words(TextStyle.TABLE_HEAD, paper.left(), y, name(paper.column() - across - GAP));
    leaf.words(TextStyle.TABLE, paper.right() - across, y, page);
    for (String line : foot) {
      y -= TextStyle.TABLE.leading();
      leaf.words(TextStyle.TABLE, paper.left(), y, line);
    }
  }

  private String name(double room) {
    List<String> lines = new LineBreaker(font, TextStyle.TABLE_HEAD).lines(book.title(), room);
    return lines.isEmpty() ? "" : lines.get(0);
  }

  private void stamp(Leaf leaf, BookPaper paper) {
    double top = paper.height() - BookPaper.MARGIN;
    double height = stampHeight();
    leaf.box(new Leaf.Box(paper.left(), top - height, paper.column(), height));
    double y = top - PAD - TextStyle.STRONG.drop();
    for (String line : stamp) {
      double across = new LineBreaker(font, TextStyle.STRONG).width(line);
      leaf.words(TextStyle.STRONG, (width - across) / 2, y, line);
      y -= TextStyle.STRONG.leading();
    }
  }

  /** A line of the list of contents, from a place at its left and its top. */
  void entry(Leaf leaf, double left, double top, Book.Section section, String page) {
    LineBreaker breaker = new LineBreaker(font, TextStyle.TEXT);
    double y = top - TextStyle.TEXT.drop();
    List<String> lines = breaker.lines(section.heading(), CONTENTS - GAP - breaker.width(page));
    leaf.words(TextStyle.TEXT, left, y, lines.isEmpty() ? "" : lines.get(0));
    leaf.words(TextStyle.TEXT, left + CONTENTS - breaker.width(page), y, page);
  }
}
