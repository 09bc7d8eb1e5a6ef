package plycrag.files.pdf;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Tolerance;

/** The text of a book on its way down page after page. */
final class Column {
  private final BookPaper paper;
  private final PdfFont font;
  private final List<Leaf> leaves = new ArrayList<>();
  private double y;

  Column(BookPaper paper, PdfFont font) {
    this.paper = paper;
    this.font = font;
    turn();
  }

  BookPaper paper() {
    return paper;
  }

  PdfFont font() {
    return font;
  }

  /** All pages so far. */
  List<Leaf> leaves() {
    return leaves;
  }

  /** The page that is being filled. */
  Leaf leaf() {
    return leaves.get(leaves.size() - 1);
  }

  /** Where it is filled down to, mm from its lower edge. */
  double y() {
    return y;
  }

  /** Goes on to the next page. */
  void turn() {
    leaves.add(new Leaf(font));
    y = paper.top();
  }

  /** Goes on to the next page where a height does not fit on this one. */
  void room(double height) {
    if (!fits(height) && y < paper.top()) {
      turn();
    }
  }

  /** Whether a height fits on this page. */
  boolean fits(double height) {
    return Tolerance.atLeast(y - height, paper.low());
  }

  /** Leaves white, but not at the head of a page. */
  void gap(double height) {
    if (y < paper.top()) {
      y -= height;
    }
  }

  /** Goes down by a height. */
  void down(double height) {
    y -= height;
  }

  /** Sets a line that is known to fit. */
  void line(TextStyle style, double x, String text) {
    leaf().words(style, x, y - style.drop(), text);
    y -= style.leading();
  }

  /** Sets lines one under the other, over as many pages as they take. */
  void lines(TextStyle style, double x, List<String> lines) {
    for (String line : lines) {
      room(style.leading());
      line(style, x, line);
    }
  }
}
