package plycrag.files.pdf;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.Book;
import plycrag.document.Drawing;

/**
 * A step of the work, whole on one page: its heading, the picture at the left, and beside it what
 * it takes, what to do and what to check.
 */
final class BookStep {
  private static final double PICTURE = 102;
  private static final double BETWEEN = 5;
  private static final double COUNT = 24;
  private static final double GAP = 2;
  private static final double TICK = 3.4;
  private static final double INDENT = 6;
  private static final double BAR = 1.2;

  private final Column column;
  private final Book.Step step;
  private final List<Line> lines = new ArrayList<>();
  private double cautionStart;
  private double cautionEnd;
  private double beginning;
  private double height;

  /** A line of text by its place below the head of a step. */
  private record Line(TextStyle style, double x, double down, String text, boolean isTicked) {}

  /**
   * Sets one step.
   *
   * @param column what is filled
   * @param step what is shown
   */
  BookStep(Column column, Book.Step step) {
    this.column = column;
    this.step = step;
    lay();
  }

  /** The height that it takes, mm. */
  double height() {
    return height + 2 * GAP;
  }

  /** Sets it. */
  void set() {
    column.room(height());
    Leaf leaf = column.leaf();
    double top = column.y() - GAP;
    double left = column.paper().left();
    leaf.rule(left, left + column.paper().column(), top + GAP / 2);
    for (Line line : lines) {
      double foot = top - line.down() - line.style().drop();
      leaf.words(line.style(), left + line.x(), foot, line.text());
      if (line.isTicked()) {
        leaf.box(new Leaf.Box(left + line.x() - INDENT + 0.2, foot - 0.4, TICK, TICK));
      }
    }
    step.caution().ifPresent(caution -> bar(leaf, top));
    step.picture().ifPresent(picture -> draw(leaf, picture, top));
    column.down(height());
  }

  private void bar(Leaf leaf, double top) {
    leaf.bar(new Leaf.Box(column.paper().left(), top - cautionEnd, BAR, cautionEnd - cautionStart));
  }

  private void draw(Leaf leaf, Drawing picture, double top) {
    double wide = picture.extent().width() / picture.scale();
    double high = picture.extent().height() / picture.scale();
    double factor = Math.min(1, PICTURE / wide);
    double y = top - beginning - high * factor;
    leaf.drawing(
        picture, new Leaf.Box(column.paper().left(), y, wide * factor, high * factor), false);
  }

  private void lay() {
    double down = 0;
    String heading = step.number() + ". " + step.heading();
    down = add(TextStyle.HEADING, 0, down, heading, column.paper().column());
    down += GAP;
    if (step.caution().isPresent()) {
      cautionStart = down;
      double x = BAR + 2 * GAP;
      double measure = column.paper().column() - x;
      down = add(TextStyle.STRONG, x, down, step.caution().get().word(), measure);
      down = add(TextStyle.TEXT, x, down, step.caution().get().text(), measure);
      cautionEnd = down;
      down += GAP;
    }
    beginning = down;
    double beside = step.picture().isPresent() ? PICTURE + BETWEEN : 0;
    double measure = column.paper().column() - beside;
    double text = down;
    for (Book.Taken taken : step.taken()) {
      double counted = add(TextStyle.STRONG, beside, text, taken.count(), COUNT - GAP);
      double told = add(TextStyle.TEXT, beside + COUNT, text, taken.what(), measure - COUNT);
      text = Math.max(counted, told);
    }
    text += step.taken().isEmpty() ? 0 : GAP;
    for (String words : step.words()) {
      text = add(TextStyle.TEXT, beside, text, words, measure) + GAP / 2;
    }
    for (String check : step.checks()) {
      int first = lines.size();
      text = add(TextStyle.TEXT, beside + INDENT, text, check, measure - INDENT) + GAP / 2;
      Line line = lines.get(first);
      lines.set(first, new Line(line.style(), line.x(), line.down(), line.text(), true));
    }
    double picture = step.picture().map(BookStep::height).orElse(0.0);
    height = Math.max(text, down + picture);
  }

  private static double height(Drawing picture) {
    double factor = Math.min(1, PICTURE * picture.scale() / picture.extent().width());
    return picture.extent().height() / picture.scale() * factor;
  }

  private List<String> broken(TextStyle style, String text, double measure) {
    return new LineBreaker(column.font(), style).lines(text, measure);
  }

  /** Adds a paragraph; how far down it ends. */
  private double add(TextStyle style, double x, double down, String text, double measure) {
    double at = down;
    for (String line : broken(style, text, measure)) {
      lines.add(new Line(style, x, at, line, false));
      at += style.leading();
    }
    return at;
  }
}
