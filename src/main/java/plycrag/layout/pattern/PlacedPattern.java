package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.skin.Axis;
import plycrag.units.Tape;

/**
 * Inserts at places that a user listed, on the marking grid. Where something stands in the way, all
 * of them shift by one amount (across, then up, each as little as keeps most of them), or each
 * blocked one moves to the nearest place that is clear, of equally near ones to the lower u, then
 * the lower v.
 */
final class PlacedPattern {
  private final PatternArea area;
  private final InsertSurroundings around;

  /**
   * @param area whose they are
   * @param around what stands in the way, with the members where they are
   */
  PlacedPattern(PatternArea area, InsertSurroundings around) {
    this.area = area;
    this.around = around;
  }

  /** Where they are set out, in the order of the list. */
  List<Point> places() {
    List<Point> asked = area.listed();
    return switch (area.wall().inserts().blocked().answer()) {
      case REPORT, DROP -> asked;
      case SHIFT -> shifted(shifted(asked, Axis.ACROSS), Axis.UP);
      case NUDGE, SOLVE -> nudged(asked);
    };
  }

  /** How many of them have something in their way. */
  int blocked(List<Point> places) {
    return (int) places.stream().filter(place -> !around.isClear(place)).count();
  }

  private List<Point> shifted(List<Point> asked, Axis axis) {
    List<Point> best = asked;
    int least = blocked(asked);
    double step = step();
    for (int steps = 1; least > 0 && steps * step <= greatestMove(); steps++) {
      double first = axis == Axis.ACROSS && area.wall().isMirrored() ? steps : -steps;
      for (double shift : List.of(first * step, -first * step)) {
        List<Point> moved = asked.stream().map(place -> moved(place, axis, shift)).toList();
        int blocked = blocked(moved);
        if (blocked < least) {
          best = moved;
          least = blocked;
        }
      }
    }
    return best;
  }

  private Point moved(Point place, Axis axis, double shift) {
    Tape tape = area.wall().tape();
    return axis == Axis.ACROSS
        ? Shapes.point(tape.snap(place.getX() + shift), place.getY())
        : Shapes.point(place.getX(), tape.snap(place.getY() + shift));
  }

  private List<Point> nudged(List<Point> asked) {
    SpatialIndex<Point> others = new SpatialIndex<>(asked, Point::getEnvelopeInternal);
    List<Point> offsets = new ArrayList<>();
    List<Point> moved = new ArrayList<>();
    List<Point> places = new ArrayList<>();
    for (Point place : asked) {
      if (around.isClear(place)) {
        places.add(place);
        continue;
      }
      if (offsets.isEmpty()) {
        offsets.addAll(offsets());
      }
      Point nearest = nearest(place, offsets, new Room(others, moved));
      moved.add(nearest);
      places.add(nearest);
    }
    return places;
  }

  /**
   * What else is set out.
   *
   * @param asked where all are asked for
   * @param moved where those are that moved
   */
  private record Room(SpatialIndex<Point> asked, List<Point> moved) {
    boolean isFree(Point place, Point wanted, InsertSurroundings around) {
      return asked.near(place.getEnvelopeInternal(), around.reach()).stream()
              .allMatch(other -> other.equals(wanted) || isApart(place, other, around))
          && moved.stream().allMatch(other -> isApart(place, other, around));
    }

    private static boolean isApart(Point place, Point other, InsertSurroundings around) {
      return !InsertSurroundings.fallsShort(around.between(place, other));
    }
  }

  /** The nearest clear place; where it was asked for if there is none. */
  private Point nearest(Point wanted, List<Point> offsets, Room room) {
    Tape tape = area.wall().tape();
    for (Point offset : offsets) {
      Point place =
          Shapes.point(
              tape.snap(wanted.getX() + offset.getX()), tape.snap(wanted.getY() + offset.getY()));
      if (area.isOwn(place) && room.isFree(place, wanted, around) && around.isClear(place)) {
        return place;
      }
    }
    return wanted;
  }

  /** All moves on the marking grid that are not too far, the least first. */
  private List<Point> offsets() {
    double step = step();
    int most = (int) Math.floor(greatestMove() / step);
    Point none = Shapes.point(0, 0);
    List<Point> offsets = new ArrayList<>();
    for (int across = -most; across <= most; across++) {
      for (int up = -most; up <= most; up++) {
        if (across * across + up * up <= most * most) {
          offsets.add(
              Shapes.point((area.wall().isMirrored() ? -across : across) * step, up * step));
        }
      }
    }
    offsets.sort(Comparator.comparingDouble(none::distance));
    return offsets;
  }

  private double step() {
    return area.wall().tape().unit().markingGrid();
  }

  private double greatestMove() {
    return area.wall().inserts().blocked().greatestMove();
  }
}
