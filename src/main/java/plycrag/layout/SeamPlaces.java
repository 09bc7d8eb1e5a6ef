package plycrag.layout;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import plycrag.geometry.Shapes;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Where seams are in the way of a facet's openings: where the timber behind them would lie half
 * within the timber round an opening, and where they run into a side which that timber cannot
 * follow, so that it ends further from the opening than a sheet may stand out.
 *
 * @param cutouts of the facet
 * @param wall that it belongs to
 */
record SeamPlaces(List<Cutout> cutouts, Wall wall) {
  private static final double TOLERANCE = 1e-6;

  SeamPlaces {
    cutouts = List.copyOf(cutouts);
  }

  static SeamPlaces of(Facet facet, Wall wall) {
    return new SeamPlaces(facet.cutouts(), wall);
  }

  /** How many of some seams are in the way. */
  long count(List<Seam> seams) {
    return seams.stream().filter(this::isInTheWay).count();
  }

  private boolean isInTheWay(Seam seam) {
    List<Backing> behind = Backing.of(seam, wall.frame());
    return cutouts.stream()
        .anyMatch(cutout -> isCrowded(seam, behind, cutout) || isBare(seam, behind, cutout));
  }

  /** Whether timber behind a seam lies half within timber round an opening. */
  private boolean isCrowded(Seam seam, List<Backing> behind, Cutout cutout) {
    Axis across = seam.axis().other();
    Envelope box = cutout.shape().getEnvelopeInternal();
    double low = across.low(box) - wall.frame().breadth();
    return Stream.of(low, across.high(box))
        .map(from -> Backing.from(from, wall.frame(), Hold.OPENING))
        .anyMatch(timber -> behind.stream().anyMatch(one -> isHalfWithin(one, timber)));
  }

  private static boolean isHalfWithin(Backing one, Backing other) {
    boolean same =
        Math.abs(one.low() - other.low()) < TOLERANCE
            && Math.abs(one.high() - other.high()) < TOLERANCE;
    return !same && one.low() < other.high() - TOLERANCE && other.low() < one.high() - TOLERANCE;
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
  Course clearest(Axis axis, double first, DoubleFunction<Course> course) {
    Course longest = course.apply(first);
    if (count(axis, longest) == 0) {
      return longest;
    }
    double step = wall.tape().unit().markingGrid();
    double marked = wall.tape().snapDown(first);
    int most = (int) Math.max(0, (marked - wall.sheet().leastWidth()) / step);
    return Stream.concat(
            Stream.of(longest),
            IntStream.rangeClosed(0, most).mapToObj(steps -> course.apply(marked - steps * step)))
        .min(
            Comparator.comparingLong((Course one) -> count(axis, one))
                .thenComparing(one -> one.spans().size()))
        .orElseThrow();
  }

  private long count(Axis axis, Course course) {
    return count(
        course.joints().stream()
            .map(joint -> new Seam(axis, joint, wall.sheet().seamGap(), 0, 0))
            .toList());
  }
}
