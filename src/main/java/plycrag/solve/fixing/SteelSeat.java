package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.catalog.FlatSteel;
import plycrag.geometry.Rod;
import plycrag.geometry.Tolerance;
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

  /** Where the middle is taken a piece is moved aside by this at a time, mm. */
  private static final double STEP = 5;

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

  /** The same, no broader than a piece that lies so far from its middle, mm. */
  SteelSeat narrowed(double width, double off) {
    double at = middle() + off;
    return new SteelSeat(one, other, at - width / 2, at + width / 2);
  }

  /** The places for a piece of a width, from the middle outward, as far as there is room. */
  Stream<SteelSeat> steps(double width) {
    return steps(width, 0, (breadth() - width) / 2);
  }

  /**
   * The same around another place than the middle.
   *
   * @param off that place, from the middle, mm
   * @param furthest from there, mm
   */
  Stream<SteelSeat> steps(double width, double off, double furthest) {
    int steps = (int) Tolerance.wholeDown(Math.max(0, furthest) / STEP);
    return IntStream.rangeClosed(0, 2 * steps)
        .mapToDouble(at -> Math.floorDiv(at + 1, 2) * (at % 2 == 0 ? -STEP : STEP))
        .map(step -> off + step)
        .filter(at -> Tolerance.atMost(Math.abs(at) + width / 2, breadth() / 2))
        .mapToObj(at -> narrowed(width, at));
  }

  /** Where a piece lies that is as broad as this. */
  SteelPlace place(SteelFit fit) {
    FlatSteel steel = fit.steel();
    double thickness = steel.legs().thickness();
    double length = steel.legs().length();
    int inOne = (fit.screws() + 1) / 2;
    Vector3 out = one.face().outward().plus(other.face().outward());
    return new SteelPlace(
        one.at(new FacePlace(0, middle())),
        out.unit(),
        outline(low, length, thickness),
        outline(high, length, thickness),
        Stream.of(one, other).map(leg -> leg.taken(low, high, length)).toList(),
        Stream.concat(
                screws(one, fit, inOne).stream(), screws(other, fit, fit.screws() - inOne).stream())
            .toList());
  }

  private List<Vector3> outline(double at, double length, double thickness) {
    Vector3 corner = one.at(new FacePlace(0, at));
    Vector3 first = one.face().outward();
    Vector3 second = other.face().outward();
    Vector3 inner = first.plus(second).times(thickness / (1 + first.dot(second)));
    Vector3 end = corner.plus(one.along().times(length));
    Vector3 far = corner.plus(other.along().times(length));
    return List.of(
        corner,
        end,
        end.plus(first.times(thickness)),
        corner.plus(inner),
        far.plus(second.times(thickness)),
        far);
  }

  private List<Rod> screws(Leg leg, SteelFit fit, int count) {
    Vector3 outward = leg.face().outward();
    Vector3 onSteel = outward.times(fit.steel().legs().thickness());
    return holes(fit.steel(), count).stream()
        .map(hole -> leg.at(hole).plus(onSteel))
        .map(head -> new Rod(head, outward.times(-1), fit.length(), fit.diameter()))
        .toList();
  }

  /** The holes of a leg that are used, from the line outward; those of a hinge lie along it. */
  private List<FacePlace> holes(FlatSteel steel, int count) {
    FlatSteel.Holes holes = steel.holes();
    if (steel.shape() == FlatSteel.Shape.HINGE) {
      return IntStream.range(0, count)
          .mapToObj(at -> new FacePlace(holes.first(), low + (at + 0.5) / count * breadth()))
          .toList();
    }
    double half = holes.gauge() / 2;
    return IntStream.range(0, count)
        .mapToObj(
            at ->
                new FacePlace(
                    holes.first() + Math.floorDiv(at, holes.lines()) * holes.pitch(),
                    middle() + (at % 2 == 0 ? -half : half)))
        .toList();
  }

  /** Whether both legs of a width may be as long, within a tolerance. */
  boolean hasRoom(double width, double length, double tolerance) {
    double low = middle() - width / 2;
    double high = middle() + width / 2;
    return one.hasRoom(low, high, length, tolerance) && other.hasRoom(low, high, length, tolerance);
  }
}
