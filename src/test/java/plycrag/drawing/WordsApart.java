package plycrag.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Drawing;
import plycrag.document.Shape;

/** Holds that no words of a drawing lie on others. */
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

  /** Without what letters reach below the line. */
  private static Envelope capitals(Shape.Label label, int scale) {
    Envelope box = Inked.box(label, scale);
    double height = label.height() * scale;
    return label.turn() == 0
        ? new Envelope(box.getMinX(), box.getMaxX(), box.getMaxY() - height, box.getMaxY())
        : box;
  }
}
