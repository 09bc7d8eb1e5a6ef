package plycrag.drawing.flat;

import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.drawing.pen.OperationLayers;
import plycrag.drawing.pen.Sketch;
import plycrag.layout.sheets.EngravedMark;
import plycrag.machining.MarkStrokes;
import plycrag.wall.machine.MarkEngraving;

/** Marks that a machine engraves, by the ways of its tool. */
public final class EngravedStrokes {
  private EngravedStrokes() {}

  /** Draws marks on the layer of their depth. */
  public static void draw(
      CheckedLayout checked, List<EngravedMark> marks, OperationLayers layers, Sketch sketch) {
    double depth =
        checked.layout().wall().machine().work().marks().map(MarkEngraving::depth).orElse(0.0);
    for (EngravedMark mark : marks) {
      MarkStrokes.of(mark).forEach(stroke -> sketch.path(layers.engraved(depth), stroke));
    }
  }
}
