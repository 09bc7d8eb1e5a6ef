package plycrag.drawing;

import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Layer;
import plycrag.layout.PartMark;
import plycrag.machining.MarkStrokes;
import plycrag.params.MarkParameters;

/** Marks that a machine engraves, by the ways of its tool. */
final class Engraving {
  private Engraving() {}

  /** Draws marks on the layer of their depth. */
  static void draw(CheckedLayout checked, List<PartMark> marks, Sketch sketch) {
    double depth = checked.layout().wall().machine().marks().map(MarkParameters::depth).orElse(0.0);
    Layer layer = Layers.engraved(depth);
    for (PartMark mark : marks) {
      MarkStrokes.of(mark).forEach(stroke -> sketch.path(layer, stroke));
    }
  }
}
