package plycrag.files.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import plycrag.PdfWords;
import plycrag.document.Book;
import plycrag.document.Cell;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.PaperSize;
import plycrag.document.Table;
import plycrag.files.Specimens;

class BookWriterTest {
  private static final double WIDTH = 210;
  private static final double HEIGHT = 297;
  private static final String FOOT = "For bouldering only, over mats. No rope, no belay.";
  private static final int ROWS = 130;

  private static Table table() {
    List<List<Cell>> rows =
        IntStream.range(0, ROWS)
            .mapToObj(
                i ->
                    List.of(
                        Cell.of("ST" + i),
                        Cell.of("stands " + "between its neighbours ".repeat(i % 9)),
                        Cell.number(i * 7, 0)))
            .toList();
    return new Table("Sticks", List.of("Mark", "Where it goes", "Length"), rows);
  }

  private static Book book(String stamp) {
    Drawing wide = new Drawing("Wide", 10, new Extent(0, 0, 5000, 900), List.of());
    List<Book.Block> first =
        List.of(
            new Book.Paragraph("The wall leans out. ".repeat(40)),
            new Book.Caution("Caution.", "Have it checked by an engineer. ".repeat(9)),
            new Book.Figure(Specimens.sheet(), "Where to drill."),
            new Book.Figure(wide, "How it is sawn."));
    List<Book.Block> second =
        List.of(
            new Book.Listing(table()),
            new Book.Checklist(List.of("Two people for the lift", "Mats laid")),
            new Book.Points(List.of("One thing", "Another")),
            new Book.Link("All drawings", "drawings/drawings.pdf"));
    return new Book(
        "River bay",
        "A boulder wall",
        stamp,
        FOOT,
        List.of(new Book.Section("Overview", first), new Book.Section("Lists", second)));
  }

  private static final byte[] FILE = BookWriter.write(book("NOT FOR MAKING"), PaperSize.A4);
  private static final List<PdfWords.Word> WORDS = PdfWords.of(FILE);

  private static int pages() {
    return WORDS.get(WORDS.size() - 1).page();
  }

  /** All text in order, without white space. */
  private static String text() {
    StringBuilder all = new StringBuilder();
    IntStream.rangeClosed(1, pages()).forEach(page -> all.append(PdfWords.text(WORDS, page)));
    return all.toString();
  }

  @Test
  void everyTextOfTheBookIsThereInItsOrder() {
    List<String> wanted = new ArrayList<>();
    wanted.addAll(List.of("River bay", "A boulder wall", "Overview", "Caution.", "Have it"));
    wanted.addAll(List.of("Where to drill.", "How it is sawn.", "Lists", "Sticks"));
    table().rows().forEach(row -> row.forEach(cell -> wanted.add(cell.text())));
    wanted.addAll(List.of("Two people for the lift", "Mats laid", "One thing", "Another"));
    wanted.addAll(List.of("All drawings", "drawings/drawings.pdf"));
    int from = 0;
    for (String one : wanted) {
      int at = text().indexOf(one.replaceAll("\\s", ""), from);
      assertThat(at).as(one).isNotNegative();
      from = at;
    }
  }

  @Test
  void everyPageSaysItsNumberTheWallAndWhatTheWallIsFor() {
    for (int page = 1; page <= pages(); page++) {
      assertThat(PdfWords.text(WORDS, page))
          .contains("NOTFORMAKING", FOOT.replace(" ", ""), "Riverbay")
          .contains("page" + page + "of" + pages());
    }
  }

  @Test
  void aTableThatGoesOnSaysItsHeadsAgain() {
    String all = text();
    int continued = all.split("Sticks,continued", -1).length - 1;
    assertThat(continued).isGreaterThan(1);
    assertThat(all.split("MarkWhereitgoesLength", -1)).hasSize(continued + 2);
  }

  /** 12 mm is what the writer promises; letters hang below their foot by a fifth of their size. */
  @Test
  void nothingLeavesTheMarginsOrStandsOnOtherWords() {
    Envelope paper = new Envelope(11.99, WIDTH - 11.99, 11.99, HEIGHT - 11.99);
    for (PdfWords.Word word : WORDS) {
      assertThat(paper.contains(word.place().getEnvelopeInternal())).as(word::toString).isTrue();
    }
    for (int i = 0; i < WORDS.size(); i++) {
      for (int j = i + 1; j < WORDS.size() && WORDS.get(j).page() == WORDS.get(i).page(); j++) {
        assertThat(WORDS.get(i).place().intersection(WORDS.get(j).place()).getArea())
            .as(WORDS.get(i) + " and " + WORDS.get(j))
            .isLessThan(0.01);
      }
    }
  }

  /** Numbers end at one place. */
  @Test
  void numbersStandToTheRight() {
    List<Double> ends =
        WORDS.stream()
            .filter(word -> word.text().matches("[0-9]{3}"))
            .map(word -> word.place().getEnvelopeInternal().getMaxX())
            .toList();
    assertThat(ends).hasSizeGreaterThan(100);
    assertThat(ends).allSatisfy(end -> assertThat(end).isCloseTo(ends.get(0), within(0.05)));
  }

  @Test
  void aViewersContentsAreTheHeadings() throws IOException {
    try (PDDocument document = Loader.loadPDF(FILE)) {
      List<String> headings = new ArrayList<>();
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        headings.add(item.getTitle());
        assertThat(item.findDestinationPage(document)).isNotNull();
      }
      assertThat(headings).containsExactly("Overview", "Lists");
    }
  }

  @Test
  void theSameMakesTheSameBytesWithoutCompression() {
    assertThat(BookWriter.write(book("NOT FOR MAKING"), PaperSize.A4)).isEqualTo(FILE);
    LittlePdf file = LittlePdf.of(FILE);
    assertThat(file.text()).doesNotContain("/Filter", "CreationDate", "ModDate");
    assertThat(file.text()).contains("/PrintScaling /None", "+LiberationSans", "/FontFile2");
    assertThat(file.boxes())
        .hasSize(3 * pages())
        .allMatch(box -> box.width() == 595.2756 && box.height() == 841.8898);
  }

  /** At 1:10 the sheet's hole of 12 mm is 0.6 mm in radius where the figure is not shrunk. */
  @Test
  void figuresAreShrunkButNeverEnlarged() {
    String content = String.join("", LittlePdf.of(FILE).contents());
    assertThat(LittlePdf.circles(content)).isNotEmpty();
    assertThat(content).contains("q 1 0 0 1 12 ").containsPattern("q 0 0\\.[0-9]+ -0\\.[0-9]+ 0 ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "(a) \\ <b> Tj ET",
        "\u0000\u0007 \t\n",
        "wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww"
            + "wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww"
            + "wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww"
      })
  void anyTextIsOnlyText(String text) {
    Drawing drawing = new Drawing("x", 1, new Extent(0, 0, 1, 1), List.of());
    Table table =
        new Table(text, List.of(text, text), List.of(List.of(Cell.of(text), Cell.of(text))));
    List<Book.Block> blocks =
        List.of(
            new Book.Paragraph(text),
            new Book.Caution(text, text),
            new Book.Checklist(List.of(text)),
            new Book.Points(List.of(text)),
            new Book.Figure(drawing, text),
            new Book.Listing(table));
    Book.Section section = new Book.Section(text, blocks);
    byte[] file =
        BookWriter.write(new Book(text, text, text, text, List.of(section)), PaperSize.A4);
    Envelope paper = new Envelope(11.99, WIDTH - 11.99, 11.99, HEIGHT - 11.99);
    assertThat(PdfWords.of(file))
        .isNotEmpty()
        .allMatch(word -> paper.contains(word.place().getEnvelopeInternal()));
  }
}
