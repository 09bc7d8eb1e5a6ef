package plycrag.drawing.pen;

import java.util.List;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;

/**
 * Dimensions that run from a datum: one line a direction, an arrow and a number at every reading,
 * so that nobody adds in the head.
 */
public final class RunningDimensions {
  private static final double GAP = 1.5;
  private static final double LINE = 8;
  private static final double LABEL = 12;
  private static final double ARROW = 1.8;

  /** How much room they take beside the view on paper, mm. */
  public static final double ROOM = 30;

  private final Sketch sketch;
  private final int sign;

  /**
   * Dimensions on one view.
   *
   * @param sketch what they are drawn on
   * @param sign 1 where the readings grow to the right, -1 where they grow to the left
   */
  public RunningDimensions(Sketch sketch, int sign) {
    this.sketch = sketch;
    this.sign = sign;
  }

  /**
   * One reading.
   *
   * @param place on the drawing's axis, mm
   * @param text what the tape shows
   */
  record Reading(double place, String text) {}

  /**
   * Readings across, below a view.
   *
   * @param datum where they start, x in mm
   * @param edge the lower edge of the view, y in mm
   */
  public void across(double datum, double edge, List<Reading> readings) {
    double line = edge - sketch.paper(LINE);
    double label = edge - sketch.paper(LABEL);
    List<Double> places = spread(readings, sign);
    sketch.line(Layers.DIMENSIONS, new Xy(datum, line), new Xy(last(readings).place(), line));
    sketch.circle(Layers.DIMENSIONS, new Xy(datum, line), sketch.paper(0.6));
    for (int at = 0; at < readings.size(); at++) {
      double x = readings.get(at).place();
      Xy foot = new Xy(x, line - sketch.paper(GAP));
      sketch.line(Layers.DIMENSIONS, new Xy(x, edge - sketch.paper(GAP)), foot);
      arrow(new Xy(x, line), -sign, 0);
      Xy end = new Xy(places.get(at), label);
      leader(foot, end);
      sketch.labelUp(
          Layers.TEXT,
          end.plus(0, -sketch.paper(0.8)),
          readings.get(at).text(),
          Sketch.SMALL,
          TextAnchor.END);
    }
  }

  /**
   * Readings up, or down from a datum on top, beside a view, on the side of the datum.
   *
   * @param datum where they start, y in mm
   * @param edge the edge of the view, x in mm
   */
  public void up(double datum, double edge, List<Reading> readings) {
    double out = -sign;
    double line = edge + out * sketch.paper(LINE);
    double label = edge + out * sketch.paper(LABEL);
    int way = last(readings).place() < datum ? -1 : 1;
    List<Double> places = spread(readings, way);
    sketch.line(Layers.DIMENSIONS, new Xy(line, datum), new Xy(line, last(readings).place()));
    sketch.circle(Layers.DIMENSIONS, new Xy(line, datum), sketch.paper(0.6));
    TextAnchor anchor = sign > 0 ? TextAnchor.END : TextAnchor.START;
    for (int at = 0; at < readings.size(); at++) {
      double y = readings.get(at).place();
      Xy foot = new Xy(line + out * sketch.paper(GAP), y);
      sketch.line(Layers.DIMENSIONS, new Xy(edge + out * sketch.paper(GAP), y), foot);
      arrow(new Xy(line, y), 0, -way);
      Xy end = new Xy(label, places.get(at));
      leader(foot, end);
      sketch.label(
          Layers.TEXT,
          end.plus(out * sketch.paper(0.8), 0),
          readings.get(at).text(),
          Sketch.SMALL,
          anchor);
    }
  }

  private void leader(Xy foot, Xy end) {
    if (!foot.equals(end)) {
      sketch.line(Layers.DIMENSIONS, foot, end);
    }
  }

  /** An open arrowhead; its shaft lies in the direction (dx, dy) from the tip. */
  private void arrow(Xy tip, double dx, double dy) {
    double length = sketch.paper(ARROW);
    double half = length * 0.27;
    Xy one = tip.plus(dx * length + dy * half, dy * length + dx * half);
    Xy other = tip.plus(dx * length - dy * half, dy * length - dx * half);
    sketch.path(Layers.DIMENSIONS, List.of(one, tip, other));
  }

  private List<Double> spread(List<Reading> readings, int way) {
    List<Double> wished = readings.stream().map(reading -> reading.place() * way).toList();
    return LabelSpread.of(wished, sketch.paper(LabelSpread.STEP)).stream()
        .map(place -> place * way)
        .toList();
  }

  private static Reading last(List<Reading> readings) {
    return readings.get(readings.size() - 1);
  }
}
