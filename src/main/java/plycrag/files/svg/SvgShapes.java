package plycrag.files.svg;

import static plycrag.files.svg.SvgStyle.attribute;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;

/** Shapes as elements, one a line. */
final class SvgShapes {
  private final PaperAxes axes;
  private final Set<String> marks;

  /**
   * Writes the shapes of one drawing.
   *
   * @param axes where they come to lie
   * @param marks labels that begin with one of them lead to its part
   */
  SvgShapes(PaperAxes axes, Set<String> marks) {
    this.axes = axes;
    this.marks = marks;
  }

  String element(Shape shape) {
    if (shape instanceof Shape.Line line) {
      return line(line);
    }
    if (shape instanceof Shape.Path path) {
      return "<polyline" + points(path.points()) + "/>";
    }
    if (shape instanceof Shape.Outline outline) {
      String fill = SvgStyle.fill(outline.fill(), outline.layer());
      return "<polygon" + points(outline.vertices()) + fill + "/>";
    }
    if (shape instanceof Shape.Area area) {
      String fill = SvgStyle.fill(area.fill(), area.layer());
      return "<polygon" + points(area.vertices()) + fill + attribute("stroke", "none") + "/>";
    }
    return shape instanceof Shape.Circle circle ? circle(circle) : led((Shape.Label) shape);
  }

  private String line(Shape.Line line) {
    return "<line"
        + attribute("x1", axes.x(line.from()))
        + attribute("y1", axes.y(line.from()))
        + attribute("x2", axes.x(line.to()))
        + attribute("y2", axes.y(line.to()))
        + "/>";
  }

  private String points(List<Xy> places) {
    return attribute(
        "points",
        places.stream()
            .map(place -> axes.x(place) + "," + axes.y(place))
            .collect(Collectors.joining(" ")));
  }

  private String circle(Shape.Circle circle) {
    return "<circle"
        + attribute("cx", axes.x(circle.centre()))
        + attribute("cy", axes.y(circle.centre()))
        + attribute("r", axes.length(circle.radius()))
        + SvgStyle.fill(circle.fill(), circle.layer())
        + "/>";
  }

  private String led(Shape.Label label) {
    return label
        .mark(marks)
        .map(mark -> "<a" + attribute("href", "#part-" + mark) + ">" + label(label) + "</a>")
        .orElseGet(() -> label(label));
  }

  /**
   * The base line is shifted by numbers, since renderers disagree about a dominant-baseline; the
   * turn about the label's place shifts it in the right direction.
   */
  private String label(Shape.Label label) {
    return "<text"
        + attribute("x", axes.x(label.at()))
        + attribute("y", axes.y(label.at(), label.height() / 2))
        + attribute("font-size", PaperAxes.number(label.height() / TextSize.CAPITALS))
        + anchor(label.anchor())
        + turn(label)
        + ">"
        + XmlText.of(label.text())
        + "</text>";
  }

  private static String anchor(TextAnchor anchor) {
    return switch (anchor) {
      case START -> "";
      case MIDDLE -> attribute("text-anchor", "middle");
      case END -> attribute("text-anchor", "end");
    };
  }

  private String turn(Shape.Label label) {
    String clockwise = PaperAxes.number(-label.turn());
    String about = axes.x(label.at()) + " " + axes.y(label.at());
    return clockwise.equals("0")
        ? ""
        : attribute("transform", "rotate(" + clockwise + " " + about + ")");
  }
}
