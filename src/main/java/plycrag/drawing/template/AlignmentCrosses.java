package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.flat.SheetTape;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Inked;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;

/**
 * Crosses by which tiles are laid: each stands at a place that a tape can mark on the sheet, says
 * its two readings from the datum corner, and is printed on every tile on which it lies, so that
 * neighbours can be laid over each other and each tile can be placed by itself.
 */
final class AlignmentCrosses {
  private static final double ARM = 4;

  /** From a cross to its reading, mm. */
  private static final double BESIDE = 1.5;

  private static final double UP = 2.4;

  /** From a tile's edge to its crosses: in the middle of what two tiles share. */
  private static final double INSET = TilePlan.LAP / 2;

  /** A cross as near to another one as this serves in its place, mm. */
  private static final double SHARED = 4;

  /** Tries along a tile's edge, in steps of this, mm. */
  private static final double STEP = 3;

  private static final int TRIES = 25;

  private final List<Xy> places;
  private final SheetTape tape;

  /**
   * Crosses at these places.
   *
   * @param places of all crosses, mm on the sheet
   * @param tape that reads them
   */
  AlignmentCrosses(List<Xy> places, SheetTape tape) {
    this.places = List.copyOf(places);
    this.tape = tape;
  }

  /**
   * Four to a tile where there is room for them, those of neighbours shared.
   *
   * @param taken what else is printed, mm on the sheet
   * @param sheet what the tape can mark
   */
  static AlignmentCrosses on(
      List<TilePlan.Tile> tiles, List<Envelope> taken, Envelope sheet, SheetTape tape) {
    List<Xy> places = new ArrayList<>();
    List<Envelope> boxes = new ArrayList<>(taken);
    for (TilePlan.Tile tile : tiles) {
      for (int corner = 0; corner < 4; corner++) {
        for (Xy place : wished(tile.window(), corner, tape)) {
          if (places.stream().anyMatch(other -> near(other, place))) {
            break;
          }
          Envelope box = box(place, tape);
          if (sheet.contains(place.x(), place.y()) && boxes.stream().noneMatch(box::intersects)) {
            places.add(place);
            boxes.add(box);
            break;
          }
        }
      }
    }
    return new AlignmentCrosses(places, tape);
  }

  /** From a corner of a tile up or down its edge. */
  private static List<Xy> wished(Envelope window, int corner, SheetTape tape) {
    boolean left = corner % 2 == 0;
    boolean low = corner < 2;
    double x = left ? window.getMinX() + INSET : window.getMaxX() - INSET;
    double y = low ? window.getMinY() + INSET : window.getMaxY() - INSET;
    List<Xy> places = new ArrayList<>();
    for (int step = 0; step < TRIES; step++) {
      places.add(tape.snap(new Xy(x, y + (low ? STEP : -STEP) * step)));
    }
    return places;
  }

  private static boolean near(Xy one, Xy other) {
    return Math.abs(one.x() - other.x()) < SHARED && Math.abs(one.y() - other.y()) < SHARED;
  }

  /** What a cross takes with its words on either side. */
  private static Envelope box(Xy place, SheetTape tape) {
    double half = TextSize.width(tape.words(place), Sketch.SMALL) + 3;
    return new Envelope(place.x() - half, place.x() + half, place.y() - ARM, place.y() + ARM + 1);
  }

  /**
   * Draws those that lie on a part of the sheet, their readings toward its middle, below where an
   * edge would go through them above.
   *
   * @param edges of the sheet and its pieces
   */
  void draw(Sketch sketch, Envelope window, FreeSpot edges) {
    for (Xy place : places) {
      if (window.contains(place.x(), place.y())) {
        sketch.line(Layers.CROSSES, place.plus(-ARM, 0), place.plus(ARM, 0));
        sketch.line(Layers.CROSSES, place.plus(0, -ARM), place.plus(0, ARM));
        boolean left = place.x() < window.centre().x;
        Shape.Label above = reading(place, left, UP);
        boolean isClear = edges.isFree(Inked.box(above, sketch.scale()));
        sketch.label(isClear ? above : reading(place, left, -UP));
      }
    }
  }

  private Shape.Label reading(Xy place, boolean left, double up) {
    return new Shape.Label(
        Layers.TEXT,
        place.plus(left ? BESIDE : -BESIDE, up),
        tape.words(place),
        Sketch.SMALL,
        left ? TextAnchor.START : TextAnchor.END,
        0);
  }
}
