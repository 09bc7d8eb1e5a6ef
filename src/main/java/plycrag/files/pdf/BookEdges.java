package plycrag.files.pdf;

import java.util.List;
import plycrag.document.Book;

/** What stands around the text: stamp and foot on every page, and the list of contents. */
final class BookEdges {
  private static final double GAP = 4;
  private static final double PAD = 1.5;

  /** How far a contents' numbers stand from the left edge, mm: near enough to be read along. */
  private static final double CONTENTS = 110;

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
    this.stamp = new LineBreaker(font, Letters.STRONG).lines(book.stamp(), column - 2 * PAD);
    this.foot = new LineBreaker(font, Letters.TABLE).lines(book.footer(), column);
  }

  /** The paper, less what stands around the text. */
  BookPaper paper(double height) {
    double head = stamp.isEmpty() ? 0 : stampHeight() + GAP;
    double low = (foot.size() + 1) * Letters.TABLE.leading() + GAP + PAD;
    return new BookPaper(width, height, head, low);
  }

  private double stampHeight() {
    return stamp.size() * Letters.STRONG.leading() + 2 * PAD;
  }

  /** Puts stamp and foot on a page. */
  void set(Leaf leaf, BookPaper paper, String page) {
    if (!stamp.isEmpty()) {
      stamp(leaf, paper);
    }
    double y = paper.low() - GAP;
    leaf.rule(paper.left(), paper.right(), y);
    y -= PAD + Letters.TABLE.drop();
    double across = new LineBreaker(font, Letters.TABLE).width(page);
    leaf.words(Letters.TABLE_HEAD, paper.left(), y, name(paper.column() - across - GAP));
    leaf.words(Letters.TABLE, paper.right() - across, y, page);
    for (String line : foot) {
      y -= Letters.TABLE.leading();
      leaf.words(Letters.TABLE, paper.left(), y, line);
    }
  }

  private String name(double room) {
    List<String> lines = new LineBreaker(font, Letters.TABLE_HEAD).lines(book.title(), room);
    return lines.isEmpty() ? "" : lines.get(0);
  }

  private void stamp(Leaf leaf, BookPaper paper) {
    double top = paper.height() - BookPaper.MARGIN;
    double height = stampHeight();
    leaf.box(new Leaf.Box(paper.left(), top - height, paper.column(), height));
    double y = top - PAD - Letters.STRONG.drop();
    for (String line : stamp) {
      double across = new LineBreaker(font, Letters.STRONG).width(line);
      leaf.words(Letters.STRONG, (width - across) / 2, y, line);
      y -= Letters.STRONG.leading();
    }
  }

  /** A line of the list of contents, its top at a height. */
  void entry(Leaf leaf, double top, String heading, String page) {
    LineBreaker breaker = new LineBreaker(font, Letters.TEXT);
    double y = top - Letters.TEXT.drop();
    List<String> lines = breaker.lines(heading, CONTENTS - GAP - breaker.width(page));
    leaf.words(Letters.TEXT, BookPaper.MARGIN, y, lines.isEmpty() ? "" : lines.get(0));
    leaf.words(Letters.TEXT, BookPaper.MARGIN + CONTENTS - breaker.width(page), y, page);
  }
}
