package plycrag.drawing.template;

import java.util.List;
import plycrag.document.Layer;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;

/** Bars to measure a print by, since printers shrink pages. */
final class PrintBars {
  /** mm. */
  static final double METRIC = 100;

  /** 4 in, mm. */
  static final double INCHES = 101.6;

  /** The words beside them. */
  static final List<String> WORDS =
      List.of(
          "Print at 100 %, not fitted to the page.",
          "Then measure: the upper bar is 100 mm, the lower 4 in.",
          "If it is not, the printer has scaled the page: do not drill by it.");

  /** How much room both take below their place, mm. */
  static final double ROOM = 14;

  private PrintBars() {}

  /** Both bars below a place, on paper of true size. */
  static void draw(Sketch sketch, Xy left) {
    bar(sketch, left.plus(0, -3), METRIC, "100 mm");
    bar(sketch, left.plus(0, -10), INCHES, "4 in");
  }

  /** A bar from a place to the right. */
  static void bar(Sketch sketch, Xy left, double length, String text) {
    Layer layer = Layers.BARS;
    Xy right = left.plus(length, 0);
    sketch.line(layer, left, right);
    sketch.line(layer, left.plus(0, -2), left.plus(0, 2));
    sketch.line(layer, right.plus(0, -2), right.plus(0, 2));
    sketch.label(Layers.TEXT, right.plus(2, 0), text, Sketch.SMALL, TextAnchor.START);
  }
}
