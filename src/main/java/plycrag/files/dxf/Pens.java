package plycrag.files.dxf;

import java.util.Comparator;
import java.util.List;
import plycrag.document.Layer;
import plycrag.document.Pen;

/** Pens as a layer has them. */
final class Pens {
  /** Hundredths of a millimetre; no other values are allowed (ezdxf manual, "Lineweights"). */
  private static final List<Integer> LINEWEIGHTS =
      List.of(
          0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158,
          200, 211);

  private Pens() {}

  /** The nearest lineweight allowed. */
  static int lineweight(Pen pen) {
    double wanted = pen.width() * 100;
    return LINEWEIGHTS.stream()
        .min(Comparator.comparingDouble(weight -> Math.abs(weight - wanted)))
        .orElseThrow();
  }

  /**
   * The colour's index: its own, or that of its pen: 7 is black on white and white on black, 8
   * grey, 1 red.
   */
  static int colour(Layer layer) {
    return layer.colour() > 0 ? layer.colour() : colour(layer.pen());
  }

  private static int colour(Pen pen) {
    return switch (pen.ink()) {
      case BLACK -> 7;
      case GREY -> 8;
      case VERMILION -> 1;
    };
  }
}
