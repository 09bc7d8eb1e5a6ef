package plycrag.files.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import plycrag.document.Book;
import plycrag.document.PaperSize;

/** Writes a book as pages of one size. */
public final class BookWriter {
  private static final double SECTION_GAP = 9;
  private static final double AFTER_HEADING = 2;
  private static final double POINTS = 72 / 25.4;

  /** Where a section begins. */
  private record Start(Book.Section section, int page, double y) {}

  private final Book book;
  private final PdfFile file;
  private final BookEdges edges;
  private final Column column;
  private final List<Start> starts = new ArrayList<>();

  private BookWriter(Book book, PdfFile file, PaperSize paper) {
    this.book = book;
    this.file = file;
    this.edges = new BookEdges(book, file.font(), paper.width());
    this.column = new Column(edges.paper(paper.height()), file.font());
  }

  /**
   * The bytes of a file.
   *
   * @param book what it shows
   * @param paper of every page, at least 200 mm either way
   */
  public static byte[] write(Book book, PaperSize paper) {
    try (PDDocument document = new PDDocument()) {
      PdfFile file = new PdfFile(document, book.title());
      return new BookWriter(book, file, paper).bytes();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private byte[] bytes() throws IOException {
    words(TextStyle.TITLE, book.title());
    column.gap(AFTER_HEADING);
    words(TextStyle.TEXT, book.subtitle());
    column.gap(SECTION_GAP);
    double contents = column.y();
    boolean listed = book.sections().size() > 1;
    column.down(listed ? half() * TextStyle.TEXT.leading() : 0);
    book.sections().forEach(this::set);
    if (listed) {
      list(contents);
    }
    return finished();
  }

  private void words(TextStyle style, String text) {
    LineBreaker breaker = new LineBreaker(column.font(), style);
    column.lines(style, column.paper().left(), breaker.lines(text, column.paper().column()));
  }

  private void set(Book.Section section) {
    BookBlocks blocks = new BookBlocks(column);
    double start = section.blocks().isEmpty() ? 0 : blocks.start(section.blocks().get(0));
    column.gap(SECTION_GAP);
    column.room(TextStyle.HEADING.leading() + AFTER_HEADING + start);
    starts.add(new Start(section, column.leaves().size(), column.y()));
    words(TextStyle.HEADING, section.heading());
    column.gap(AFTER_HEADING);
    section.blocks().forEach(blocks::set);
  }

  /** How many lines the list of contents has, in two columns. */
  private int half() {
    return (book.sections().size() + 1) / 2;
  }

  /** The list of contents, now that the pages are known. */
  private void list(double top) {
    Leaf first = column.leaves().get(0);
    for (int at = 0; at < starts.size(); at++) {
      Start start = starts.get(at);
      boolean isRight = at >= half();
      double left = BookPaper.MARGIN + (isRight ? BookEdges.CONTENTS + SECTION_GAP : 0);
      double y = top - (at % half()) * TextStyle.TEXT.leading();
      edges.entry(first, left, y, start.section(), Integer.toString(start.page()));
    }
  }

  private byte[] finished() throws IOException {
    List<PDPage> pages = new ArrayList<>();
    int count = column.leaves().size();
    for (Leaf leaf : column.leaves()) {
      edges.set(leaf, column.paper(), "page " + (pages.size() + 1) + " of " + count);
      pages.add(file.add(column.paper().width(), column.paper().height(), leaf.content()));
    }
    for (Start start : starts) {
      PDPageXYZDestination place = new PDPageXYZDestination();
      place.setPage(pages.get(start.page() - 1));
      place.setLeft(0);
      place.setTop((int) Math.ceil((start.y() + AFTER_HEADING) * POINTS));
      file.name(start.section().heading(), place);
    }
    return file.bytes();
  }
}
