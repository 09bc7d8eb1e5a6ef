package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.geometry.Trig;

/** What of a drawing's plane has ink on it. */
public final class Inked {
  /** How far a letter such as g reaches below the line, in heights of capitals, at most. */
  private static final double DESCENT = 0.32;

  private Inked() {}

  /** The smallest box around all that is drawn, pens' widths not counted, mm of the model. */
  public static Envelope box(Drawing drawing) {
    Envelope box = new Envelope();
    drawing.shapes().forEach(shape -> box.expandToInclude(box(shape, drawing.scale())));
    return box;
  }

  /**
   * The smallest box around a shape.
   *
   * @param scale of the drawing that it belongs to
   */
  public static Envelope box(Shape shape, int scale) {
    Envelope box = new Envelope();
    for (Xy place : places(shape, scale)) {
      box.expandToInclude(place.x(), place.y());
    }
    return box;
  }

  private static List<Xy> places(Shape shape, int scale) {
    if (shape instanceof Shape.Line line) {
      return List.of(line.from(), line.to());
    }
    if (shape instanceof Shape.Path path) {
      return path.points();
    }
    if (shape instanceof Shape.Outline outline) {
      return outline.vertices();
    }
    if (shape instanceof Shape.Area area) {
      return area.vertices();
    }
    if (shape instanceof Shape.Circle circle) {
      double radius = circle.radius();
      return List.of(circle.centre().plus(-radius, -radius), circle.centre().plus(radius, radius));
    }
    return corners((Shape.Label) shape, scale);
  }

  private static List<Xy> corners(Shape.Label label, int scale) {
    double width = TextSize.width(label.text(), label.height()) * scale;
    double start = -width * part(label.anchor());
    double height = label.height() * scale;
    double cosine = Trig.cos(label.turn());
    double sine = Trig.sin(label.turn());
    List<Xy> corners = new ArrayList<>();
    for (double along : new double[] {start, start + width}) {
      for (double up : new double[] {-height * (0.5 + DESCENT), height / 2}) {
        corners.add(label.at().plus(along * cosine - up * sine, along * sine + up * cosine));
      }
    }
    return corners;
  }

  private static double part(TextAnchor anchor) {
    return switch (anchor) {
      case START -> 0;
      case MIDDLE -> 0.5;
      case END -> 1;
    };
  }
}
