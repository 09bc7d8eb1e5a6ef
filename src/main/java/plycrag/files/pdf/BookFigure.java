package plycrag.files.pdf;

import java.util.List;
import plycrag.document.Book;
import plycrag.document.Drawing;

/** A figure with its caption, together on one page, at its own scale or shrunk to the page. */
final class BookFigure {
  /** What stays free on a page for the heading above the figure, mm. */
  private static final double HEADING = 20;

  private static final double GAP = 2;

  /** A figure that would be smaller than this part of its size is turned, if that helps. */
  private static final double SMALL = 0.8;

  /** How much turning must help. */
  private static final double BETTER = 1.15;

  private final Column column;
  private final Book.Figure figure;

  /**
   * Sets one figure.
   *
   * @param column what is filled
   * @param figure what is shown
   */
  BookFigure(Column column, Book.Figure figure) {
    this.column = column;
    this.figure = figure;
  }

  /** The height that it takes with its caption, mm. */
  double height() {
    return picture(isTurned()).height() + GAP + captionHeight();
  }

  /** Sets it. */
  void set() {
    boolean turned = isTurned();
    Leaf.Box size = picture(turned);
    column.room(height());
    column.down(size.height());
    double left = column.paper().left();
    Leaf.Box place = new Leaf.Box(left, column.y(), size.width(), size.height());
    column.leaf().drawing(figure.drawing(), place, turned);
    column.down(GAP);
    column.lines(TextStyle.TEXT, left, caption());
    column.gap(GAP);
  }

  private List<String> caption() {
    LineBreaker breaker = new LineBreaker(column.font(), TextStyle.TEXT);
    return breaker.lines(figure.caption(), column.paper().column());
  }

  private double captionHeight() {
    return caption().size() * TextStyle.TEXT.leading();
  }

  private boolean isTurned() {
    double straight = factor(false);
    return straight < SMALL && factor(true) > BETTER * straight;
  }

  private double factor(boolean turned) {
    double width = turned ? paperHeight() : paperWidth();
    double height = turned ? paperWidth() : paperHeight();
    double page = column.paper().page() - HEADING - GAP - captionHeight();
    return Math.min(1, Math.min(column.paper().column() / width, page / height));
  }

  private Leaf.Box picture(boolean turned) {
    double factor = factor(turned);
    double width = paperWidth() * factor;
    double height = paperHeight() * factor;
    return turned ? new Leaf.Box(0, 0, height, width) : new Leaf.Box(0, 0, width, height);
  }

  private double paperWidth() {
    Drawing drawing = figure.drawing();
    return drawing.extent().width() / drawing.scale();
  }

  private double paperHeight() {
    Drawing drawing = figure.drawing();
    return drawing.extent().height() / drawing.scale();
  }
}
