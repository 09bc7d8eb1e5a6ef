package plycrag.files.pdf;

import static plycrag.files.pdf.PageShapes.number;

import java.util.stream.Collectors;
import plycrag.document.Fill;
import plycrag.document.Ink;
import plycrag.document.Pen;
import plycrag.document.Shape;

/** Widths, dashes and colours, as operators. */
final class ShapeStyle {
  private static final String WHITE = "1 1 1";
  private static final String TIMBER = "0.953 0.89 0.765";
  private static final String ADDED = "0.984 0.89 0.867";
  private static final String ADDED_SHADE = "0.953 0.765 0.714";

  private ShapeStyle() {}

  /** What holds for a shape until another is set. */
  static String of(Shape shape) {
    Pen pen = shape.layer().pen();
    if (shape instanceof Shape.Label) {
      return fill(colour(pen.ink()));
    }
    String lines = number(pen.width()) + " w " + colour(pen.ink()) + " RG " + dashes(pen) + "\n";
    return switch (fillOf(shape)) {
      case NONE -> lines;
      case PAPER -> lines + fill(WHITE);
      case TIMBER -> lines + fill(TIMBER);
      case ADDED -> lines + fill(ADDED);
      case ADDED_SHADE -> lines + fill(ADDED_SHADE);
      case INK -> lines + fill(colour(pen.ink()));
    };
  }

  /** What a shape is filled with. */
  static Fill fillOf(Shape shape) {
    if (shape instanceof Shape.Outline outline) {
      return outline.fill();
    }
    if (shape instanceof Shape.Area area) {
      return area.fill();
    }
    return shape instanceof Shape.Circle circle ? circle.fill() : Fill.NONE;
  }

  private static String fill(String colour) {
    return colour + " rg\n";
  }

  private static String dashes(Pen pen) {
    return pen.dash().pattern().stream()
        .map(PageShapes::number)
        .collect(Collectors.joining(" ", "[", "] 0 d"));
  }

  private static String colour(Ink ink) {
    return switch (ink) {
      case BLACK -> "0 0 0";
      case GREY -> "0.467 0.467 0.467";
      case VERMILION -> "0.851 0.22 0.118";
    };
  }
}
