package plycrag.drawing.pen;

import java.util.List;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;

/**
 * The block at the foot of a printed drawing, with the fields of ISO 7200 that make sense here; the
 * owner and the date are for whoever issues the drawing to fill in. It is 180 mm wide, as ISO 7200
 * has it.
 */
final class TitleBlock {
  /** mm. */
  static final double WIDTH = 180;

  private static final double ROW = 10.5;

  /** mm. */
  static final double HEIGHT = 3 * ROW;

  private static final double PAD = 1.5;
  private static final double[] LETTERS = {Sketch.LARGE, 3, Sketch.SMALL};

  private final Sketch sketch;
  private final double right;
  private final double low;

  /**
   * A block on one page.
   *
   * @param sketch the page, true size
   * @param right its right edge, mm
   * @param low its lower edge, mm
   */
  TitleBlock(Sketch sketch, double right, double low) {
    this.sketch = sketch;
    this.right = right;
    this.low = low;
  }

  /**
   * What stands in it.
   *
   * @param wall the wall's name
   * @param title of the drawing
   * @param type of document
   * @param name of the drawing's file
   * @param scale 1:n by its n
   * @param unit of the figures
   * @param sheet which of how many
   */
  record Entries(
      String wall, String title, String type, String name, int scale, String unit, String sheet) {}

  /** Draws it. */
  void draw(Entries entries, boolean thirdAngle) {
    sketch.outline(Layers.PARTS, List.of(at(0, 0), at(WIDTH, 0), at(WIDTH, HEIGHT), at(0, HEIGHT)));
    sketch.line(Layers.DIMENSIONS, at(0, ROW), at(WIDTH, ROW));
    sketch.line(Layers.DIMENSIONS, at(0, 2 * ROW), at(WIDTH, 2 * ROW));
    field(2, 0, 60, "Legal owner", "");
    field(2, 60, WIDTH, "Wall", entries.wall());
    field(1, 0, 60, "Document type", entries.type());
    field(1, 60, WIDTH, "Title", entries.title());
    field(0, 0, 60, "Name", entries.name());
    field(0, 60, 85, "Scale", "1:" + entries.scale());
    field(0, 85, 105, "Figures in", entries.unit());
    field(0, 105, 130, "Projection", "");
    field(0, 130, 158, "Date of issue", "");
    field(0, 158, WIDTH, "Sheet", entries.sheet());
    drawProjection(at(117.5, 3.8), thirdAngle);
  }

  private Xy at(double x, double y) {
    return new Xy(right - WIDTH + x, low + y);
  }

  private void field(int row, double from, double to, String caption, String value) {
    double foot = row * ROW;
    if (from > 0) {
      sketch.line(Layers.DIMENSIONS, at(from, foot), at(from, foot + ROW));
    }
    sketch.label(
        Layers.SMALL_PRINT,
        at(from + PAD, foot + ROW - 2.4),
        caption,
        Sketch.SMALL,
        TextAnchor.START);
    double room = to - from - 2 * PAD;
    if (!value.isEmpty()) {
      double height = height(value, room);
      String text = cut(value, height, room);
      sketch.label(Layers.TEXT, at(from + PAD, foot + 3.2), text, height, TextAnchor.START);
    }
  }

  private static double height(String text, double room) {
    for (double height : LETTERS) {
      if (TextSize.width(text, height) <= room) {
        return height;
      }
    }
    return Sketch.SMALL;
  }

  private static String cut(String text, double height, double room) {
    String rest = text;
    while (TextSize.width(rest, height) > room) {
      rest = rest.substring(0, rest.length() - 2) + "…";
    }
    return rest;
  }

  /**
   * The symbol of ISO 5456-2: a cone's stump from the side and from its thin end. In first-angle
   * projection what is seen from the left stands at the right.
   */
  private void drawProjection(Xy middle, boolean thirdAngle) {
    double side = thirdAngle ? 1 : -1;
    Xy cone = middle.plus(side * 4, 0);
    Xy end = middle.plus(-side * 4, 0);
    double thin = 1;
    double thick = 2;
    sketch.outline(
        Layers.HOLES,
        List.of(
            cone.plus(-2.5, -thin), cone.plus(2.5, -thick),
            cone.plus(2.5, thick), cone.plus(-2.5, thin)));
    sketch.circle(Layers.HOLES, end, thin);
    sketch.circle(Layers.HOLES, end, thick);
  }
}
