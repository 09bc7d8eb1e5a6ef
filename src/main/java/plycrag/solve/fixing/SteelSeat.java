package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.Stream;
import plycrag.catalog.FlatSteel;
import plycrag.geometry.Solid;
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;

/**
 * Two sides of two members that a piece of steel may join, and the stretch of the line between its
 * legs on which it may lie.
 *
 * @param one on the first member
 * @param other on the second
 * @param low where the stretch begins along the line, mm
 * @param high where it ends, mm
 */
record SteelSeat(Leg one, Leg other, double low, double high) {
  /** Planes that meet at less than about 12° make no corner, as the sine of it. */
  private static final double FLAT = 0.2;

  /** A bend that runs more than this with the grain of a member is none at its end. */
  private static final double WITH_GRAIN = 0.9;

  /** How far out the breadth of a face is measured from a bend, mm. */
  private static final List<Double> FROM_BEND = List.of(2.0, 30.0);

  /** The same from the middle of a joint where both lie flush and an end may slant, mm. */
  private static final List<Double> FROM_JOINT = List.of(45.0, 60.0);

  /** A bend may stay this far off the timber, as where packing lies between, mm. */
  private static final double GAP = 5;

  /** Under a flat strap the timber may begin as late, where no screw is yet, mm. */
  private static final double SLANT = 40;

  /** Faces nearer than this lie in one plane, mm. */
  private static final double FLUSH = 1;

  /** The corners in which an angle bracket may sit where a member ends on another. */
  static List<SteelSeat> corners(TimberBody first, TimberBody second, List<TimberBody> others) {
    return seats(first, second, others, along -> along < WITH_GRAIN);
  }

  /** The corners between two members that lie along each other without touching. */
  static List<SteelSeat> edges(TimberBody first, TimberBody second, List<TimberBody> others) {
    return seats(first, second, others, along -> along > WITH_GRAIN);
  }

  /** The corners whose bend runs so far along the first one's grain, as a cosine. */
  private static List<SteelSeat> seats(
      TimberBody first, TimberBody second, List<TimberBody> others, DoublePredicate wanted) {
    List<SteelSeat> seats = new ArrayList<>();
    for (TimberFace one : first.sides()) {
      for (TimberFace other : second.sides()) {
        Vector3 bend = one.outward().cross(other.outward());
        if (bend.length() > FLAT && wanted.test(Math.abs(bend.unit().dot(first.way())))) {
          Vector3 line = bend.unit();
          Vector3 origin = meeting(one, other);
          Vector3 along = toward(line.cross(one.outward()), other.outward());
          Vector3 beside = toward(line.cross(other.outward()), one.outward());
          add(
              seats,
              FROM_BEND,
              new Leg(first, one, origin, along, line, GAP, others),
              new Leg(second, other, origin, beside, line, GAP, others));
        }
      }
    }
    return seats;
  }

  /** The flush sides over which a strap may lie where the end of a member meets another. */
  static List<SteelSeat> flush(TimberBody first, TimberBody second, List<TimberBody> others) {
    List<SteelSeat> seats = new ArrayList<>();
    for (TimberFace one : first.sides()) {
      for (TimberFace other : second.sides()) {
        if (one.outward().dot(other.outward()) > 1 - FLAT / 10
            && Math.abs(one.distance() - other.distance()) < FLUSH) {
          Vector3 line = one.outward().cross(first.way()).unit();
          Vector3 way = first.toward(second);
          Vector3 origin = way.times(end(one, way)).plus(one.outward().times(one.distance()));
          add(
              seats,
              FROM_JOINT,
              new Leg(first, one, origin, way.times(-1), line, SLANT, others),
              new Leg(second, other, origin, way, line, SLANT, others));
        }
      }
    }
    return seats;
  }

  /** The middle of a face's end on a way, which may slant. */
  private static double end(TimberFace face, Vector3 way) {
    return face.corners().stream()
        .map(way::dot)
        .sorted(Comparator.reverseOrder())
        .limit(2)
        .mapToDouble(along -> along)
        .average()
        .orElseThrow();
  }

  private static Vector3 toward(Vector3 way, Vector3 target) {
    return way.dot(target) < 0 ? way.unit().times(-1) : way.unit();
  }

  /** A place on both planes. */
  private static Vector3 meeting(TimberFace one, TimberFace other) {
    double both = one.outward().dot(other.outward());
    double square = 1 - both * both;
    double first = (one.distance() - both * other.distance()) / square;
    double second = (other.distance() - both * one.distance()) / square;
    return one.outward().times(first).plus(other.outward().times(second));
  }

  private static void add(List<SteelSeat> seats, List<Double> outs, Leg one, Leg other) {
    List<Double> breadths = new ArrayList<>();
    for (Leg leg : List.of(one, other)) {
      for (double out : outs) {
        List<Double> breadth = leg.breadth(out);
        if (breadth.isEmpty()) {
          return;
        }
        breadths.addAll(breadth);
      }
    }
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (int at = 0; at < breadths.size(); at += 2) {
      low = Math.max(low, breadths.get(at));
      high = Math.min(high, breadths.get(at + 1));
    }
    if (high - low > FLUSH) {
      seats.add(new SteelSeat(one, other, low, high));
    }
  }

  double breadth() {
    return high - low;
  }

  double middle() {
    return (low + high) / 2;
  }

  /** The angle between the legs, degrees; 180 for a strap that lies flat. */
  double angle() {
    return Trig.angle(one.along().cross(other.along()).length(), one.along().dot(other.along()));
  }

  /** How long both legs may be that are so wide, mm. */
  double room(double width) {
    double half = width / 2;
    return Math.min(
        one.room(middle() - half, middle() + half), other.room(middle() - half, middle() + half));
  }

  /** Where the legs of a piece lie, with the heads of its screws. */
  List<Solid> taken(FlatSteel steel) {
    double half = steel.legs().width() / 2;
    return Stream.of(one, other)
        .map(leg -> leg.taken(middle() - half, middle() + half, steel.legs().length()))
        .toList();
  }

  /** Whether both legs of a width may be as long, within a tolerance. */
  boolean hasRoom(double width, double length, double tolerance) {
    double low = middle() - width / 2;
    double high = middle() + width / 2;
    return one.hasRoom(low, high, length, tolerance) && other.hasRoom(low, high, length, tolerance);
  }
}
