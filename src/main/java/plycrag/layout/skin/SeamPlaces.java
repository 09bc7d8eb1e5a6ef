package plycrag.layout.skin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Where seams are in the way of a facet's openings and notches: where the timber behind them would
 * lie half within the timber round an opening or along a side, and where they run into an opening
 * which square timber cannot follow, so that it ends further from the rim than a sheet may stand
 * out.
 */
final class SeamPlaces {
  private final Facet facet;
  private final Wall wall;
  private final List<FoldCut> cuts;

  /** The timber that seams must not lie half within, by the axis that both run along. */
  private final Map<Axis, List<Backing>> timber = new EnumMap<>(Axis.class);

  /**
   * Those of a facet.
   *
   * @param facet whose openings and sides
   * @param wall that it belongs to
   */
  SeamPlaces(Facet facet, Wall wall) {
    this.facet = facet;
    this.wall = wall;
    this.cuts = FoldCuts.of(facet, wall).sides();
    for (Axis axis : Axis.values()) {
      timber.put(
          axis,
          Stream.of(roundOpenings(axis), alongSides(axis), atCorners(axis))
              .flatMap(Function.identity())
              .toList());
    }
  }

  /** How many of some seams are in the way. */
  long count(List<Seam> seams) {
    return seams.stream().filter(this::isInTheWay).count();
  }

  private boolean isInTheWay(Seam seam) {
    List<Backing> behind = Backing.of(seam, wall.frame());
    return timber.get(seam.axis()).stream()
            .anyMatch(other -> behind.stream().anyMatch(one -> isHalfWithin(one, other)))
        || facet.cutouts().stream().anyMatch(cutout -> isBare(seam, behind, cutout));
  }

  private Stream<Backing> roundOpenings(Axis axis) {
    Axis across = axis.other();
    double breadth = wall.frame().breadth();
    return facet.cutouts().stream()
        .map(cutout -> cutout.shape().getEnvelopeInternal())
        .flatMap(box -> Stream.of(across.low(box) - breadth, across.high(box)))
        .map(from -> Backing.from(from, wall.frame(), Fixity.OPENING));
  }

  /** The timber along the sides of the facet that run along an axis. */
  private Stream<Backing> alongSides(Axis axis) {
    List<LineString> sides = Shapes.outerEdges(facet.boundary());
    return IntStream.range(0, sides.size())
        .filter(at -> !Tolerance.isSome(axis.other().size(sides.get(at).getEnvelopeInternal())))
        .mapToObj(at -> along(sides.get(at), axis, leansIn(at)));
  }

  /** A facet lies on the left of its sides. */
  private Backing along(LineString side, Axis axis, double leansIn) {
    Coordinate from = side.getCoordinateN(0);
    Coordinate to = side.getCoordinateN(1);
    double studs = axis == Axis.UP ? Backing.edgeCount(wall.frame()) : 1;
    double broad = studs * wall.frame().breadth() + leansIn;
    if (axis == Axis.UP) {
      return to.y > from.y ? edge(from.x - broad, from.x) : edge(from.x, from.x + broad);
    }
    return to.x > from.x ? edge(from.y, from.y + broad) : edge(from.y - broad, from.y);
  }

  /** How far the timber along a side goes inward behind the sheets, at a fold, mm. */
  private double leansIn(int side) {
    return Math.max(0, -cuts.get(side).slope() * wall.frame().depth());
  }

  private Backing edge(double low, double high) {
    return new Backing(low, high, wall.frame().depth(), Fixity.EDGE);
  }

  /** Where two sides meet in a notch and one slants, timber meets at all angles. */
  private Stream<Backing> atCorners(Axis axis) {
    List<LineString> sides = Shapes.outerEdges(facet.boundary());
    return IntStream.range(0, sides.size())
        .filter(at -> isSlantingNotch(sides.get(at), sides.get((at + 1) % sides.size())))
        .mapToObj(
            at -> {
              double corner = axis.other().low(sides.get(at).getEndPoint().getEnvelopeInternal());
              double lean = Math.max(leansIn(at), leansIn((at + 1) % sides.size()));
              double near = 2 * wall.frame().breadth() + lean;
              return edge(corner - near, corner + near);
            });
  }

  private static boolean isSlantingNotch(LineString side, LineString next) {
    boolean slants =
        Stream.of(side, next)
            .map(Direction::of)
            .anyMatch(way -> !way.equals(Direction.LEVEL) && !way.equals(Direction.UP));
    return slants
        && Orientation.index(side.getCoordinateN(0), side.getCoordinateN(1), next.getCoordinateN(1))
            == Orientation.CLOCKWISE;
  }

  private static boolean isHalfWithin(Backing one, Backing other) {
    boolean same =
        Tolerance.same(one.low(), other.low()) && Tolerance.same(one.high(), other.high());
    return !same
        && Tolerance.isLess(one.low(), other.high())
        && Tolerance.isLess(other.low(), one.high());
  }

  /** Whether timber behind a seam, cut square, ends too far before an opening. */
  private boolean isBare(Seam seam, List<Backing> behind, Cutout cutout) {
    if (cutout.isRectangle()) {
      return false;
    }
    double half = seam.gap() / 2;
    return Stream.of(seam.middle() - half, seam.middle() + half)
        .anyMatch(
            edge ->
                behind.stream()
                    .filter(one -> one.low() <= edge && edge <= one.high())
                    .anyMatch(one -> bare(seam.axis(), edge, one, cutout) > wall.rimOverhang()));
  }

  private static double bare(Axis axis, double edge, Backing behind, Cutout cutout) {
    Envelope box = cutout.shape().getEnvelopeInternal();
    if (edge <= axis.other().low(box) || edge >= axis.other().high(box)) {
      return 0;
    }
    double from = axis.low(box) - 1;
    double to = axis.high(box) + 1;
    Geometry met =
        axis == Axis.UP ? Shapes.line(edge, from, edge, to) : Shapes.line(from, edge, to, edge);
    Geometry band =
        axis == Axis.UP
            ? Shapes.rectangle(behind.low(), from, behind.high(), to)
            : Shapes.rectangle(from, behind.low(), to, behind.high());
    Envelope open = Shapes.shared(cutout.shape(), met).getEnvelopeInternal();
    Envelope closed = Shapes.shared(cutout.shape(), band).getEnvelopeInternal();
    return open.isNull()
        ? 0
        : Math.max(axis.low(open) - axis.low(closed), axis.high(closed) - axis.high(open));
  }

  /**
   * The course whose joints are least in the way: the one with a first piece as long as it may be,
   * or with one cut shorter, by as little as helps; of those the fewest pieces.
   *
   * @param axis along which the seams at its joints run
   * @param first how long its first piece may be, mm
   * @param course for a length of the first piece
   */
  LengthDivision clearest(Axis axis, double first, DoubleFunction<LengthDivision> course) {
    LengthDivision longest = course.apply(first);
    if (count(axis, longest) == 0) {
      return longest;
    }
    double step = wall.tape().unit().markingGrid();
    double marked = wall.tape().snapDown(first);
    int most = (int) Math.max(0, (marked - wall.sheet().seams().leastWidth()) / step);
    List<LengthDivision> courses = new ArrayList<>(List.of(longest));
    IntStream.rangeClosed(0, most)
        .forEach(steps -> courses.add(course.apply(marked - steps * step)));
    courses.sort(Comparator.comparingInt(one -> one.spans().size()));
    return courses.stream()
        .filter(one -> count(axis, one) == 0)
        .findFirst()
        .orElseGet(
            () ->
                courses.stream()
                    .min(Comparator.comparingLong(one -> count(axis, one)))
                    .orElseThrow());
  }

  private long count(Axis axis, LengthDivision course) {
    return count(
        course.joints().stream()
            .map(joint -> new Seam(axis, joint, wall.sheet().seams().gap(), 0, 0))
            .toList());
  }
}
