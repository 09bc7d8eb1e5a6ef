package plycrag.files.pdf;

import static plycrag.files.pdf.PageShapes.number;

import plycrag.document.Drawing;
import plycrag.document.Print;
import plycrag.document.Shape;

/** What is painted on a page, in the operators of ISO 32000-1 annex A; a unit is a millimetre. */
final class PageContent {
  /** 72 / 25.4, to ten places: 0.0000001 mm over a metre. */
  private static final String MILLIMETRE = "2.8346456693";

  /** How every page's operators begin. */
  static final String START = MILLIMETRE + " 0 0 " + MILLIMETRE + " 0 0 cm\n1 j\n";

  private PageContent() {}

  static String of(Print.Page page, PdfFont font) {
    StringBuilder out = new StringBuilder(START);
    page.drawings().forEach(placed -> append(placed, font, out));
    return out.toString();
  }

  /** Paints a drawing; nothing beyond its extent. */
  static void append(Print.Placed placed, PdfFont font, StringBuilder out) {
    out.append("q\n").append(clip(placed));
    PageShapes shapes = new PageShapes(placed, font);
    String style = "";
    for (Shape shape : placed.drawing().shapes()) {
      String wanted = ShapeStyle.of(shape);
      if (!wanted.equals(style)) {
        style = wanted;
        out.append(style);
      }
      out.append(shapes.operators(shape));
    }
    out.append("Q\n");
  }

  private static String clip(Print.Placed placed) {
    Drawing drawing = placed.drawing();
    return number(placed.at().x())
        + " "
        + number(placed.at().y())
        + " "
        + number(drawing.extent().width() / drawing.scale())
        + " "
        + number(drawing.extent().height() / drawing.scale())
        + " re W n\n";
  }
}
