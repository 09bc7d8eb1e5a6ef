package plycrag.files.pdf;

import static plycrag.files.pdf.PageShapes.number;

import plycrag.document.Drawing;
import plycrag.document.Print;
import plycrag.document.Xy;
import plycrag.units.Decimal;

/** A page while it is filled; places in mm from its lower left corner. */
final class Leaf {
  private static final double HAIRLINE = 0.18;
  private static final double PEN = 0.35;

  /** 0.02 mm over a page. */
  private static final int FACTOR_DECIMALS = 4;

  private final PdfFont font;
  private final StringBuilder out = new StringBuilder(PageContent.START);

  Leaf(PdfFont font) {
    this.font = font;
  }

  /** A line of text from a place on its letters' foot. */
  void words(TextStyle style, double x, double y, String text) {
    if (text.isBlank()) {
      return;
    }
    String heavy = "q " + number(style.stroke()) + " w 0 0 0 RG 2 Tr ";
    out.append(style.bold() ? heavy : "")
        .append("0 0 0 rg BT /" + PdfFont.NAME.getName() + " " + number(style.size()) + " Tf ")
        .append(number(x) + " " + number(y) + " Td " + font.encoded(text) + " Tj ET")
        .append(style.bold() ? " Q\n" : "\n");
  }

  /** A level hairline. */
  void rule(double left, double right, double y) {
    out.append(number(HAIRLINE) + " w 0 0 0 RG [] 0 d " + number(left) + " " + number(y) + " m ")
        .append(number(right) + " " + number(y) + " l S\n");
  }

  /** An upright bar that asks for attention. */
  void bar(Box box) {
    out.append("0.851 0.22 0.118 rg " + box.operators() + "f\n");
  }

  /** An empty box. */
  void box(Box box) {
    out.append(number(PEN) + " w 0 0 0 RG [] 0 d " + box.operators() + "S\n");
  }

  /** A drawing shrunk to fill a box; turned, its foot is at the right. */
  void drawing(Drawing drawing, Box box, boolean turned) {
    double width = drawing.extent().width() / drawing.scale();
    double factor = (turned ? box.height() : box.width()) / width;
    String size = Decimal.of(factor, FACTOR_DECIMALS);
    out.append("q ")
        .append(turned ? "0 " + size + " -" + size + " 0 " : size + " 0 0 " + size + " ")
        .append(number(turned ? box.x() + box.width() : box.x()))
        .append(" " + number(box.y()) + " cm\n");
    PageContent.append(new Print.Placed(drawing, new Xy(0, 0)), font, out);
    out.append("Q\n");
  }

  /** All operators of the page. */
  String content() {
    return out.toString();
  }

  /** A rectangle by its lower left corner and its size, mm. */
  record Box(double x, double y, double width, double height) {
    private String operators() {
      return number(x) + " " + number(y) + " " + number(width) + " " + number(height) + " re ";
    }
  }
}
