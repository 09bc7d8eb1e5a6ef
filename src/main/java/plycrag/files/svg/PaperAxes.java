package plycrag.files.svg;

import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Xy;
import plycrag.units.Decimal;

/** From the model's millimetres to the paper's, y downwards. */
final class PaperAxes {
  private static final int DECIMALS = 4;

  private final Extent extent;
  private final int scale;

  /**
   * Axes of one drawing.
   *
   * @param extent what is shown, model mm
   * @param scale n of 1:n
   */
  PaperAxes(Extent extent, int scale) {
    this.extent = extent;
    this.scale = scale;
  }

  static PaperAxes of(Drawing drawing) {
    return new PaperAxes(drawing.extent(), drawing.scale());
  }

  String width() {
    return length(extent.width());
  }

  String height() {
    return length(extent.height());
  }

  String x(Xy place) {
    return length(place.x() - extent.left());
  }

  String y(Xy place) {
    return length(extent.high() - place.y());
  }

  /** The y of a place that lies lower on paper by {@code down} paper millimetres. */
  String y(Xy place, double down) {
    return number((extent.high() - place.y()) / scale + down);
  }

  /** A length of the model. */
  String length(double model) {
    return number(model / scale);
  }

  /** A number that is the paper's already. */
  static String number(double value) {
    return Decimal.of(value, DECIMALS);
  }
}
