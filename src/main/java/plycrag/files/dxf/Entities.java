package plycrag.files.dxf;

import java.util.List;
import plycrag.document.Layer;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;

/** Shapes as entities, everything by layer. */
final class Entities {
  /** The bit of a polyline that is closed. */
  private static final int CLOSED = 1;

  /** A text whose place is on the middle of its height. */
  private static final int MIDDLE_HEIGHT = 2;

  private final TagWriter tags;
  private final int scale;

  /**
   * Writes the entities of one drawing.
   *
   * @param tags where to
   * @param scale what texts' paper millimetres are multiplied by
   */
  Entities(TagWriter tags, int scale) {
    this.tags = tags;
    this.scale = scale;
  }

  void write(Shape shape) {
    if (shape instanceof Shape.Line line) {
      start("LINE", line.layer(), "AcDbLine").place(10, line.from()).place(11, line.to());
    } else if (shape instanceof Shape.Path path) {
      polyline(path.layer(), path.points(), 0);
    } else if (shape instanceof Shape.Outline outline) {
      polyline(outline.layer(), outline.vertices(), CLOSED);
    } else if (shape instanceof Shape.Circle circle) {
      start("CIRCLE", circle.layer(), "AcDbCircle");
      tags.place(10, circle.centre()).real(40, circle.radius());
    } else {
      label((Shape.Label) shape);
    }
  }

  private TagWriter start(String type, Layer layer, String subclass) {
    return tags.record(type, Handles.MODEL_SPACE)
        .marker("AcDbEntity")
        .text(8, layer.name())
        .marker(subclass);
  }

  private void polyline(Layer layer, List<Xy> places, int flags) {
    if (tags.since2000()) {
      start("LWPOLYLINE", layer, "AcDbPolyline").whole(90, places.size()).whole(70, flags);
      places.forEach(place -> tags.flat(10, place));
    } else {
      oldPolyline(layer, places, flags);
    }
  }

  /** R12 has no LWPOLYLINE: a head, a record for each vertex, an end. */
  private void oldPolyline(Layer layer, List<Xy> places, int flags) {
    start("POLYLINE", layer, "").whole(66, 1).place(10, new Xy(0, 0)).whole(70, flags);
    places.forEach(place -> start("VERTEX", layer, "").place(10, place));
    start("SEQEND", layer, "");
  }

  /** Readers that know anchors take the second place, others the first. */
  private void label(Shape.Label label) {
    start("TEXT", label.layer(), "AcDbText").place(10, label.at());
    tags.real(40, label.height() * scale).text(1, DxfText.of(label.text()));
    tags.real(50, label.turn()).text(7, Tables.STYLE).whole(72, anchor(label.anchor()));
    tags.place(11, label.at()).marker("AcDbText").whole(73, MIDDLE_HEIGHT);
  }

  private static int anchor(TextAnchor anchor) {
    return switch (anchor) {
      case START -> 0;
      case MIDDLE -> 1;
      case END -> 2;
    };
  }
}
