package plycrag.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.document.Xy;
import plycrag.drawing.pen.Inked;
import plycrag.geometry.Shapes;

/** Holds that no words of a drawing lie on others, and none on lines. */
public final class WordsApart {
  private WordsApart() {}

  /** Fails where some do. */
  public static void check(Drawing drawing) {
    List<Shape> labels = drawing.shapes().stream().filter(Shape.Label.class::isInstance).toList();
    for (int at = 0; at < labels.size(); at++) {
      Envelope box = capitals((Shape.Label) labels.get(at), drawing.scale());
      for (Shape other : labels.subList(0, at)) {
        assertThat(box.intersects(capitals((Shape.Label) other, drawing.scale())))
            .as(drawing.title() + ": " + labels.get(at) + " on " + other)
            .isFalse();
      }
    }
  }

  /** Fails where a line goes through words. */
  public static void checkLines(Drawing drawing) {
    List<LineSegment> lines =
        drawing.shapes().stream().flatMap(shape -> lines(shape).stream()).toList();
    for (Shape shape : drawing.shapes()) {
      if (shape instanceof Shape.Label label) {
        Polygon ink = ink(label, drawing.scale());
        Envelope box = ink.getEnvelopeInternal();
        assertThat(
                lines.stream()
                    .filter(line -> box.intersects(line.p0, line.p1))
                    .filter(line -> crosses(line, ink)))
            .as(drawing.title() + ": " + label)
            .isEmpty();
      }
    }
  }

  /** A little less than the capitals, so that a line may touch them; turned with them. */
  private static Polygon ink(Shape.Label label, int scale) {
    Shape.Label level =
        new Shape.Label(label.layer(), label.at(), label.text(), label.height(), label.anchor(), 0);
    Envelope box = capitals(level, scale);
    box.expandBy(-0.3 * scale);
    AffineTransformation turn =
        AffineTransformation.rotationInstance(
            Math.toRadians(label.turn()), label.at().x(), label.at().y());
    return (Polygon) turn.transform(Shapes.rectangle(box));
  }

  private static boolean crosses(LineSegment line, Polygon ink) {
    return Shapes.line(line.p0.x, line.p0.y, line.p1.x, line.p1.y).intersects(ink);
  }

  private static List<LineSegment> lines(Shape shape) {
    if (shape instanceof Shape.Line line) {
      return List.of(segment(line.from(), line.to()));
    }
    List<Xy> points = new ArrayList<>();
    if (shape instanceof Shape.Path path) {
      points.addAll(path.points());
    } else if (shape instanceof Shape.Outline outline) {
      points.addAll(outline.vertices());
      points.add(outline.vertices().get(0));
    }
    return IntStream.range(1, points.size())
        .mapToObj(at -> segment(points.get(at - 1), points.get(at)))
        .toList();
  }

  private static LineSegment segment(Xy from, Xy to) {
    return new LineSegment(from.x(), from.y(), to.x(), to.y());
  }

  /** Without what letters reach below the line. */
  private static Envelope capitals(Shape.Label label, int scale) {
    Envelope box = Inked.box(label, scale);
    double height = label.height() * scale;
    return label.turn() == 0
        ? new Envelope(box.getMinX(), box.getMaxX(), box.getMaxY() - height, box.getMaxY())
        : box;
  }
}
