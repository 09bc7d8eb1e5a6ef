package plycrag.files.html;

import java.util.List;
import java.util.Optional;
import plycrag.document.Book;
import plycrag.document.Cell;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Table;
import plycrag.document.WallPage;

/** A book that has every kind of block. */
final class SampleBook {
  static final Drawing ELEVATION =
      new Drawing("Elevation of main", 10, new Extent(0, 0, 1800, 1200), List.of());

  static final Table SHOPPING =
      new Table(
          "What to buy",
          List.of("What", "Pieces", "Weight, kg"),
          List.of(
              List.of(Cell.of("Plywood 18 mm, 2400 × 1200"), Cell.of(2), Cell.mm(62.4)),
              List.of(Cell.of("Timber 45 × 90, 4200"), Cell.of(9), Cell.of("by the merchant"))));

  static final Book BOOK =
      new Book(
          "River bay",
          "Boulder wall for the boathouse",
          "Not for making",
          "Bouldering only, over mats.",
          List.of(
              new Book.Section(
                  "Overview",
                  List.of(
                      new Book.Figure(ELEVATION, "Seen from the front."),
                      new Book.Paragraph("The wall leans out 30°."),
                      new Book.Caution("Caution.", "Have it checked by an engineer."))),
              new Book.Section(
                  "Lists",
                  List.of(
                      new Book.Listing(SHOPPING),
                      new Book.Checklist(List.of("Two people for the lift", "Mats laid"))))));

  private SampleBook() {}

  /** The book with one text in the place of every text it has. */
  static Book saying(String text) {
    Drawing drawing = new Drawing(text, 1, new Extent(0, 0, 1, 1), List.of());
    Table table =
        new Table(text, List.of(text, text), List.of(List.of(Cell.of(text), Cell.of(text))));
    List<Book.Block> blocks =
        List.of(
            new Book.Paragraph(text),
            new Book.Caution(text, text),
            new Book.Checklist(List.of(text)),
            new Book.Points(List.of(text)),
            new Book.Figure(drawing, text),
            new Book.Listing(table),
            new Book.Facts(List.of(new WallPage.Fact(text, text))),
            new Book.Step(
                1,
                text,
                Optional.of(drawing),
                List.of(new Book.Taken(text, text)),
                List.of(text),
                List.of(text),
                Optional.of(new Book.Caution(text, text))),
            new Book.Link(text, "labels.html"));
    Book.Section section = new Book.Section(text, blocks);
    return new Book(text, text, text, text, List.of(section, section));
  }
}
