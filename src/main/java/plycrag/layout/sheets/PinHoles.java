package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Distances;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.MachinedHole.Bore;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.MachinedHole.Marks;
import plycrag.layout.sheets.MachinedHole.OnSheet;
import plycrag.wall.Wall;
import plycrag.wall.machine.KeepOut;
import plycrag.wall.machine.Pins;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/**
 * Finds room for two pins on the upright line in the middle of a sheet, one as low and one as high
 * as can be, and where there is room not as far from their edges, so that a sheet turned the wrong
 * way does not go on them: in the waste, clear of what cuts the pieces out, and of places to keep
 * out of.
 */
final class PinHoles {
  /** What stays around a pin (a choice, no source), mm. */
  private static final double APART = 2;

  /**
   * How far from the sheet's edge the middle of a pin stands at least, in its diameters: nearer,
   * the edge splits when the sheet is pressed on to it (a choice, no source).
   */
  private static final double FROM_EDGE = 2;

  /** How far apart places are tried, mm. */
  private static final double STEP = 1;

  /** Pins that stand nearer to each other let a sheet turn (a choice, no source), of its height. */
  private static final double SPREAD = 0.5;

  private final Wall wall;
  private final LaidSheet sheet;
  private final Pins pins;
  private final List<Polygon> taken = new ArrayList<>();

  private PinHoles(Wall wall, LaidSheet sheet, Pins pins) {
    this.wall = wall;
    this.sheet = sheet;
    this.pins = pins;
    sheet.pieces().forEach(laid -> taken.add(laid.placement().of(laid.piece().blank())));
  }

  /** Two holes, the lower first; none where there is no room for two. */
  static List<MachinedHole> of(Wall wall, LaidSheet sheet) {
    Pins pins = wall.machine().work().pins();
    return new PinHoles(wall, sheet, pins).holes();
  }

  private List<MachinedHole> holes() {
    double margin = fromEdge(pins);
    double high = sheet.stock().height() - margin;
    List<Double> free = new ArrayList<>();
    for (double y = Math.ceil(margin); y <= high; y += STEP) {
      if (isFree(Shapes.point(sheet.stock().width() / 2, y))) {
        free.add(y);
      }
    }
    if (free.isEmpty()) {
      return List.of();
    }
    Pair best = oneWay(free).orElse(new Pair(free.get(0), free.get(free.size() - 1)));
    return best.spread() < SPREAD * sheet.stock().height()
        ? List.of()
        : List.of(hole("pin 1", best.low()), hole("pin 2", best.top()));
  }

  /** Two heights. */
  private record Pair(double low, double top) {
    double spread() {
      return top - low;
    }
  }

  /**
   * The places farthest apart of which the wrong turning, from below upward, or a turn of the sheet
   * in its plane would bring neither onto the other.
   */
  private Optional<Pair> oneWay(List<Double> free) {
    double low = free.get(0);
    double top = free.get(free.size() - 1);
    return Stream.concat(
            free.stream().map(other -> new Pair(low, other)),
            free.stream().map(other -> new Pair(other, top)))
        .filter(pair -> fitsOneWay(pair.low(), pair.top(), sheet.stock().height(), pins))
        .filter(pair -> pair.spread() >= SPREAD * sheet.stock().height())
        .max(Comparator.comparingDouble(Pair::spread));
  }

  private static boolean fitsOneWay(double low, double top, double height, Pins pins) {
    return Math.abs(low + top - height) >= pins.diameter();
  }

  /** Whether a sheet with its pins goes on them in no other way than turned over as told. */
  static boolean fitOneWay(List<MachinedHole> holes, double height, Pins pins) {
    List<Double> places = holes.stream().map(hole -> hole.spot().y()).sorted().toList();
    return places.size() == 2 && fitsOneWay(places.get(0), places.get(1), height, pins);
  }

  private static double fromEdge(Pins pins) {
    return Math.ceil(FROM_EDGE * pins.diameter());
  }

  /** What a pin's middle keeps off pieces and off what cuts round them, mm. */
  private static double fromPieces(Wall wall) {
    double cutter =
        ToolBox.cutter(wall.machine(), wall.sheet().thickness()).map(Tool::diameter).orElse(0.0);
    return around(wall.machine().work().pins()) + cutter;
  }

  private static double around(Pins pins) {
    return pins.diameter() / 2 + APART;
  }

  /** How much of a sheet must be left at its upper and its lower edge for pins, mm. */
  static double margin(Wall wall) {
    return fromEdge(wall.machine().work().pins()) + fromPieces(wall);
  }

  private boolean isFree(Point place) {
    double fromPieces = fromPieces(wall);
    return taken.stream().allMatch(area -> Distances.from(place, area) >= fromPieces)
        && wall.machine().equipment().keepOuts().stream()
            .allMatch(other -> Distances.from(place, area(other)) >= around(pins));
  }

  private static Polygon area(KeepOut place) {
    return Shapes.rectangle(
        place.corner().left(), place.corner().low(), place.right(), place.high());
  }

  private MachinedHole hole(String mark, double y) {
    double x = sheet.stock().width() / 2;
    return new MachinedHole(
        new Marks(mark, "", "", sheet.mark()),
        Kind.PIN,
        Shapes.point(x, y),
        new OnSheet(x, y),
        new Bore(pins.diameter(), wall.sheet().thickness() + pins.depth(), SheetFace.BACK));
  }
}
