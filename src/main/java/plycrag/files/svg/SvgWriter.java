package plycrag.files.svg;

import static plycrag.files.svg.SvgStyle.attribute;

import java.util.List;
import java.util.Set;
import plycrag.document.Drawing;
import plycrag.document.Layer;
import plycrag.document.Shape;

/** Writes drawings as SVG. */
public final class SvgWriter {
  private static final String PROLOG = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final String FONTS = "Liberation Sans, Arial, Helvetica, sans-serif";

  private SvgWriter() {}

  /** A file that stands alone, to be encoded as UTF-8. */
  public static String write(Drawing drawing) {
    return PROLOG + inline(drawing);
  }

  /** The same as an element of an HTML page. It holds no id, so a page may hold many. */
  public static String inline(Drawing drawing) {
    return inline(drawing, Set.of());
  }

  /**
   * The same, its marks leading to their parts' lines on the page.
   *
   * @param marks of parts that have an element {@code part-ST1} on the page
   */
  public static String inline(Drawing drawing, Set<String> marks) {
    PaperAxes axes = PaperAxes.of(drawing);
    StringBuilder out = new StringBuilder(root(axes, marks.isEmpty() ? "img" : "group"));
    out.append("<title>").append(XmlText.of(drawing.title())).append("</title>\n");
    out.append("<rect" + size(axes, "") + attribute("fill", "#fff") + "/>\n");
    shapes(out, drawing.shapes(), new SvgShapes(axes, marks));
    return out.append("</svg>\n").toString();
  }

  private static String root(PaperAxes axes, String role) {
    return "<svg"
        + attribute("xmlns", NAMESPACE)
        + attribute("role", role)
        + size(axes, "mm")
        + attribute("viewBox", "0 0 " + axes.width() + " " + axes.height())
        + attribute("fill", "none")
        + attribute("stroke-linejoin", "round")
        + attribute("font-family", FONTS)
        + ">\n";
  }

  private static String size(PaperAxes axes, String unit) {
    return attribute("width", axes.width() + unit) + attribute("height", axes.height() + unit);
  }

  /** Opens a group wherever the attributes change. */
  private static void shapes(StringBuilder out, List<Shape> shapes, SvgShapes elements) {
    String open = "";
    for (Shape shape : shapes) {
      String group = "<g" + style(shape) + ">\n";
      if (!group.equals(open)) {
        out.append(open.isEmpty() ? "" : "</g>\n").append(group);
        open = group;
      }
      out.append(elements.element(shape)).append('\n');
    }
    out.append(open.isEmpty() ? "" : "</g>\n");
  }

  private static String style(Shape shape) {
    Layer layer = shape.layer();
    return shape instanceof Shape.Label ? SvgStyle.text(layer) : SvgStyle.lines(layer);
  }
}
