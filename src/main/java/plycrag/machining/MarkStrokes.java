package plycrag.machining;

import java.util.List;
import plycrag.document.Xy;
import plycrag.layout.sheets.EngravedMark;

/** The ways of an engraver through a mark's letters. */
public final class MarkStrokes {
  private MarkStrokes() {}

  /** Stroke by stroke, each through two places or more on the sheet as it lies, mm. */
  public static List<List<Xy>> of(EngravedMark mark) {
    return mark.strokes().stream()
        .map(stroke -> stroke.stream().map(at -> new Xy(at.x, at.y)).toList())
        .toList();
  }
}
