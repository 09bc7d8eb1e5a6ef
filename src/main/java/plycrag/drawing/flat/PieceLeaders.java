package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.LabelSpread;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.stock.Stick;
import plycrag.units.Tape;

/**
 * Marks and lengths of pieces too narrow to hold them: below the bar, each with a leader to its
 * piece, moved apart as far as they need. Where there are more than a few they read from the right.
 */
final class PieceLeaders {
  /** How far to the right labels may stand on paper, mm. */
  private static final double PAGE = 150;

  /** More of them in a line would stand too far from their pieces. */
  private static final int IN_LINE = 4;

  /** How far a leader reaches into its piece on paper, mm. */
  private static final double INTO = 2;

  /** From the bar to where leaders part on paper, mm. */
  private static final double STRAIGHT = 1.2;

  /** From the bar to the end of leaders on paper, mm. */
  private static final double DROP = 3.5;

  private static final double GAP = 0.8;

  /** Between labels in a line on paper, mm. */
  private static final double APART = 2;

  private final Sketch sketch;
  private final Tape tape;

  /**
   * Writes below one bar.
   *
   * @param sketch what they are drawn on
   * @param tape in which lengths are read
   */
  PieceLeaders(Sketch sketch, Tape tape) {
    this.sketch = sketch;
    this.tape = tape;
  }

  /** What the labels take below the bar on paper, mm; nothing if there are none. */
  double room(List<Stick.Cut> narrow) {
    if (narrow.isEmpty()) {
      return 0;
    }
    return DROP + GAP + (isInLine(narrow) ? Sketch.SMALL : widest(narrow));
  }

  /** Draws them; how far they reach to the right, mm. */
  double draw(List<Stick.Cut> narrow, double base) {
    boolean isInLine = isInLine(narrow);
    double step = isInLine ? widest(narrow) + APART : LabelSpread.STEP;
    List<Double> places = places(narrow, step);
    for (int at = 0; at < narrow.size(); at++) {
      Xy end = new Xy(places.get(at), base - sketch.paper(DROP));
      lead(middle(narrow.get(at)), base, end);
      if (isInLine) {
        Xy label = end.plus(0, -sketch.paper(GAP + Sketch.SMALL / 2));
        sketch.label(Layers.TEXT, label, text(narrow.get(at)), Sketch.SMALL, TextAnchor.MIDDLE);
      } else {
        Xy label = end.plus(0, -sketch.paper(GAP));
        sketch.labelUp(Layers.TEXT, label, text(narrow.get(at)), Sketch.SMALL, TextAnchor.END);
      }
    }
    return narrow.isEmpty() ? 0 : places.get(narrow.size() - 1) + sketch.paper(step / 2);
  }

  private void lead(double middle, double base, Xy end) {
    Xy edge = new Xy(middle, base - sketch.paper(STRAIGHT));
    sketch.line(Layers.DIMENSIONS, new Xy(middle, base + sketch.paper(INTO)), edge);
    sketch.line(Layers.DIMENSIONS, edge, end);
  }

  private static boolean isInLine(List<Stick.Cut> narrow) {
    return narrow.size() <= IN_LINE;
  }

  private double widest(List<Stick.Cut> narrow) {
    return narrow.stream()
        .mapToDouble(cut -> TextSize.width(text(cut), Sketch.SMALL))
        .max()
        .orElse(0);
  }

  /** Spread within the page, as near to their pieces as that allows. */
  private List<Double> places(List<Stick.Cut> narrow, double step) {
    List<Double> wished = new ArrayList<>();
    for (int at = 0; at < narrow.size(); at++) {
      double least = sketch.paper(step * (at + 0.5));
      double most = sketch.paper(PAGE - step * (narrow.size() - at - 0.5));
      wished.add(Math.max(least, Math.min(most, middle(narrow.get(at)))));
    }
    return LabelSpread.of(wished, sketch.paper(step));
  }

  private static double middle(Stick.Cut cut) {
    return (cut.offset() + cut.end()) / 2;
  }

  private String text(Stick.Cut cut) {
    return cut.member().mark() + "  " + tape.reading(cut.member().length());
  }
}
