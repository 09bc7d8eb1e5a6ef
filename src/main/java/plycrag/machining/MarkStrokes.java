package plycrag.machining;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.document.Xy;
import plycrag.layout.sheets.EngravedMark;

/** The ways of an engraver through a mark's letters. */
public final class MarkStrokes {
  private MarkStrokes() {}

  /** Stroke by stroke, each through two places or more on the sheet as it lies, mm. */
  public static List<List<Xy>> of(EngravedMark mark) {
    return StrokeFont.strokes(mark.text(), mark.height()).stream()
        .map(stroke -> stroke.points().stream().map(at -> onSheet(mark, at)).toList())
        .toList();
  }

  private static Xy onSheet(EngravedMark mark, Xy inText) {
    Coordinate place = mark.at(inText.x(), inText.y());
    return new Xy(place.x, place.y);
  }
}
