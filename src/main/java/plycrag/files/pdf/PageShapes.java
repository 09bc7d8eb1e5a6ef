package plycrag.files.pdf;

import java.util.List;
import plycrag.document.Drawing;
import plycrag.document.Fill;
import plycrag.document.Print;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.geometry.Trig;
import plycrag.units.Decimal;

/** Shapes as operators. */
final class PageShapes {
  private static final int DECIMALS = 3;

  /**
   * How far the handles of a quarter circle's Bézier curve lie from its ends, in radii: the curve
   * then leaves the circle by 0.03 % of the radius at most (common practice, no source).
   */
  private static final double HANDLE = 0.5522847498;

  private final Print.Placed placed;
  private final PdfFont font;

  /**
   * Writes the shapes of one drawing on a page.
   *
   * @param placed the drawing that they belong to
   * @param font for text
   */
  PageShapes(Print.Placed placed, PdfFont font) {
    this.placed = placed;
    this.font = font;
  }

  /** A number on paper. */
  static String number(double value) {
    return Decimal.of(value, DECIMALS);
  }

  String operators(Shape shape) {
    if (shape instanceof Shape.Line line) {
      return chain(List.of(line.from(), line.to())) + "S\n";
    }
    if (shape instanceof Shape.Path path) {
      return chain(path.points()) + "S\n";
    }
    if (shape instanceof Shape.Outline outline) {
      return chain(outline.vertices()) + (outline.fill() == Fill.NONE ? "s\n" : "b\n");
    }
    if (shape instanceof Shape.Area area) {
      return chain(area.vertices()) + "f\n";
    }
    return shape instanceof Shape.Circle circle ? circle(circle) : label((Shape.Label) shape);
  }

  private double x(double model) {
    Drawing drawing = placed.drawing();
    return placed.at().x() + (model - drawing.extent().left()) / drawing.scale();
  }

  private double y(double model) {
    Drawing drawing = placed.drawing();
    return placed.at().y() + (model - drawing.extent().low()) / drawing.scale();
  }

  private String chain(List<Xy> places) {
    StringBuilder out = new StringBuilder();
    String operator = " m ";
    for (Xy place : places) {
      out.append(pair(x(place.x()), y(place.y()))).append(operator);
      operator = " l ";
    }
    return out.toString();
  }

  private String circle(Shape.Circle circle) {
    double x = x(circle.centre().x());
    double y = y(circle.centre().y());
    double radius = circle.radius() / placed.drawing().scale();
    StringBuilder out = new StringBuilder(pair(x + radius, y)).append(" m ");
    double right = radius;
    double up = 0;
    for (int quarter = 0; quarter < 4; quarter++) {
      double nextRight = -up;
      double nextUp = right;
      out.append(pair(x + right + nextRight * HANDLE, y + up + nextUp * HANDLE)).append(' ');
      out.append(pair(x + nextRight + right * HANDLE, y + nextUp + up * HANDLE)).append(' ');
      out.append(pair(x + nextRight, y + nextUp)).append(" c ");
      right = nextRight;
      up = nextUp;
    }
    return out.append(circle.fill() == Fill.NONE ? "s\n" : "b\n").toString();
  }

  private String label(Shape.Label label) {
    double size = label.height() / TextSize.CAPITALS;
    double back = part(label.anchor()) * font.width(label.text()) * size;
    double down = label.height() / 2;
    double cosine = Trig.cos(label.turn());
    double sine = Trig.sin(label.turn());
    double x = x(label.at().x()) - back * cosine + down * sine;
    double y = y(label.at().y()) - back * sine - down * cosine;
    return "BT /"
        + PdfFont.NAME.getName()
        + " "
        + number(size)
        + " Tf "
        + turned(cosine, sine)
        + " "
        + pair(x, y)
        + " Tm "
        + font.encoded(label.text())
        + " Tj ET\n";
  }

  private static String turned(double cosine, double sine) {
    String level = Decimal.of(cosine, 4);
    return level + " " + Decimal.of(sine, 4) + " " + Decimal.of(-sine, 4) + " " + level;
  }

  private static double part(TextAnchor anchor) {
    return switch (anchor) {
      case START -> 0;
      case MIDDLE -> 0.5;
      case END -> 1;
    };
  }

  private static String pair(double x, double y) {
    return number(x) + " " + number(y);
  }
}
