package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.wall.Sheet;
import plycrag.wall.Wall;

/**
 * The rectangles that sheets leave over, from which strips are cut one after another: a cut right
 * along the rectangle frees a strip, a cut across it gives its length; both remainders stay.
 */
final class OffcutStore {
  private final Envelope sheet;
  private final double kerf;
  private final List<Room> rooms;
  private int further;

  /**
   * A rectangle on a sheet.
   *
   * @param sheet the sheet's mark; empty for a further one
   * @param box where it lies, mm
   */
  record Room(Optional<String> sheet, Envelope box) {}

  private OffcutStore(Envelope sheet, double kerf, List<Room> rooms, int further) {
    this.sheet = sheet;
    this.kerf = kerf;
    this.rooms = new ArrayList<>(rooms);
    this.further = further;
  }

  /** All offcuts of a wall's sheets, sheet by sheet. */
  static OffcutStore of(Wall wall, List<LaidSheet> sheets) {
    List<Room> rooms = new ArrayList<>();
    for (LaidSheet laid : sheets) {
      for (Envelope offcut : laid.stock().cutting().offcuts()) {
        rooms.add(new Room(Optional.of(laid.mark()), offcut));
      }
    }
    Sheet sheet = wall.sheet();
    return new OffcutStore(
        new Envelope(0, sheet.length(), 0, sheet.width()), wall.nesting().gap(), rooms, 0);
  }

  OffcutStore copy() {
    return new OffcutStore(sheet, kerf, rooms, further);
  }

  /** Takes over what remains in another. */
  void become(OffcutStore other) {
    rooms.clear();
    rooms.addAll(other.rooms);
    further = other.further;
  }

  /** Has another whole sheet. */
  void addFurther() {
    rooms.add(new Room(Optional.empty(), sheet));
    further++;
  }

  int further() {
    return further;
  }

  /** The longest strip of a width that any rectangle takes, mm; 0 if none does. */
  double longest(double width) {
    return rooms.stream()
        .mapToDouble(room -> Math.max(run(room.box(), true, width), run(room.box(), false, width)))
        .max()
        .orElse(0);
  }

  /** How long a strip is that runs along x, or along y. */
  private static double run(Envelope box, boolean alongX, double width) {
    double across = alongX ? box.getHeight() : box.getWidth();
    double along = alongX ? box.getWidth() : box.getHeight();
    return Tolerance.atLeast(across, width) ? along : 0;
  }

  /** Cuts a strip from the smallest rectangle that takes it, along its longer side if it may. */
  Optional<Room> take(double length, double width) {
    Optional<Room> smallest =
        rooms.stream()
            .filter(room -> fits(room, true, length, width) || fits(room, false, length, width))
            .min(Comparator.comparingDouble(room -> room.box().getArea()));
    return smallest.map(room -> cut(room, length, width));
  }

  private static boolean fits(Room room, boolean alongX, double length, double width) {
    return Tolerance.atLeast(run(room.box(), alongX, width), length);
  }

  private Room cut(Room room, double length, double width) {
    Envelope box = room.box();
    boolean isWide = box.getWidth() >= box.getHeight();
    boolean alongX = fits(room, isWide, length, width) ? isWide : !isWide;
    double x = Shapes.onGrid(box.getMinX() + (alongX ? length : width));
    double y = Shapes.onGrid(box.getMinY() + (alongX ? width : length));
    Envelope strip = new Envelope(box.getMinX(), x, box.getMinY(), y);
    rooms.remove(room);
    if (alongX) {
      add(room, new Envelope(x + kerf, box.getMaxX(), box.getMinY(), y), box.getMaxX() - x);
      add(
          room,
          new Envelope(box.getMinX(), box.getMaxX(), y + kerf, box.getMaxY()),
          box.getMaxY() - y);
    } else {
      add(room, new Envelope(box.getMinX(), x, y + kerf, box.getMaxY()), box.getMaxY() - y);
      add(
          room,
          new Envelope(x + kerf, box.getMaxX(), box.getMinY(), box.getMaxY()),
          box.getMaxX() - x);
    }
    return new Room(room.sheet(), strip);
  }

  private void add(Room from, Envelope rest, double left) {
    if (left > kerf) {
      rooms.add(new Room(from.sheet(), rest));
    }
  }
}
