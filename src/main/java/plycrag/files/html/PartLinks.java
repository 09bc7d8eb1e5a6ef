package plycrag.files.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plycrag.document.Book;
import plycrag.document.Cell;
import plycrag.document.Shape;

/**
 * How parts are found on a page: a line in a list is {@code part-ST1}, and leads to the first
 * figure of parts that shows the part.
 */
final class PartLinks {
  private final List<Book.Figure> figures;
  private final Map<String, Integer> places;

  /**
   * Leads to these figures.
   *
   * @param figures those of parts, in the order of the book
   * @param places the number of the figure that shows a part, from 0, by its mark
   */
  PartLinks(List<Book.Figure> figures, Map<String, Integer> places) {
    this.figures = figures;
    this.places = places;
  }

  /** The links of a book. */
  static PartLinks of(Book book) {
    List<Book.Figure> figures = new ArrayList<>();
    for (Book.Section section : book.sections()) {
      for (Book.Block block : section.blocks()) {
        if (block instanceof Book.Figure figure && figure.isOfParts()) {
          figures.add(figure);
        }
      }
    }
    Map<String, Integer> places = new LinkedHashMap<>();
    Set<String> marks = book.marks();
    for (int at = 0; at < figures.size(); at++) {
      for (Shape shape : figures.get(at).drawing().shapes()) {
        if (shape instanceof Shape.Label label) {
          int number = at;
          label.mark(marks).ifPresent(mark -> places.putIfAbsent(mark, number));
        }
      }
    }
    return new PartLinks(figures, places);
  }

  /** The attribute by which a figure is found, or none. */
  String anchor(Book.Figure figure) {
    return figure.isOfParts() ? " id=\"figure-" + (figures.indexOf(figure) + 1) + "\"" : "";
  }

  /** A part's marks, each with its place and the way to its figure. */
  String marks(Cell.Marks cell) {
    return cell.marks().stream().map(this::mark).collect(Collectors.joining(" "));
  }

  private String mark(String mark) {
    String words = HtmlText.of(mark);
    return places.containsKey(mark)
        ? HtmlText.fill(
            "<a id=\"part-%s\" href=\"#figure-%d\">%s</a>", words, places.get(mark) + 1, words)
        : HtmlText.fill("<span id=\"part-%s\">%s</span>", words, words);
  }
}
