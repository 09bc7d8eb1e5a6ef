package plycrag.drawing.pen;

import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Xy;

/**
 * The room around a view: running dimensions on one side and below, a stamp or band above, the
 * title lines at the foot.
 */
public final class ViewPage {
  private static final double ABOVE = 14;
  private static final double BESIDE = 8;
  private static final double MARGIN = 3;

  private final Extent view;
  private final boolean mirrored;

  /**
   * The room around one view.
   *
   * @param view what is shown, without its dimensions, in model mm
   * @param mirrored whether the datum is at the right
   */
  public ViewPage(Extent view, boolean mirrored) {
    this.view = view;
    this.mirrored = mirrored;
  }

  /** Adds title lines and stamp, and closes the drawing. */
  public Drawing finish(CheckedLayout checked, Sketch sketch, String title, List<String> notes) {
    TitleLines lines = new TitleLines(checked, title, sketch.scale(), notes);
    double datumSide = sketch.paper(RunningDimensions.ROOM);
    double farSide = sketch.paper(BESIDE);
    double left = view.left() - (mirrored ? farSide : datumSide);
    double right = view.right() + (mirrored ? datumSide : farSide);
    double foot = view.low() - datumSide;
    double low = foot - sketch.paper(lines.room());
    double needed = sketch.paper(lines.width() + 2 * MARGIN);
    lines.draw(sketch, new Xy(left + sketch.paper(MARGIN), foot));
    double high = view.high() + sketch.paper(ABOVE);
    TitleLines.stamp(
        checked, sketch, Layers.STAMP, new Xy(left + sketch.paper(MARGIN), high - sketch.paper(5)));
    Extent page = new Extent(left, low, Math.max(right, left + needed), high);
    return sketch.drawing(checked.layout().wall().name() + ": " + title, page);
  }
}
