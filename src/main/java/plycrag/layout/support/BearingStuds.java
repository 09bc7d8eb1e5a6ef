package plycrag.layout.support;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Tolerance;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.pattern.Insert;
import plycrag.solve.support.SupportSite;
import plycrag.wall.Wall;

/** The studs at which a support may stand: left sides, x of the run, ascending, mm. */
final class BearingStuds {
  private static final double FLUSH = 1;

  /** Half of how far up a stud plywood on its side reaches (a choice), mm. */
  private static final double HALF = 105;

  /** What ends on the sides of studs. */
  private static final List<MemberRole> BETWEEN = List.of(MemberRole.BLOCKING, MemberRole.HEADER);

  /** As much lower than wished something may meet a frame (a choice), mm. */
  private static final double LOWEST = 350;

  private final Wall wall;
  private final double bay;
  private final boolean isLevel;
  private final UpperEdges edges;

  /**
   * @param bay the greatest distance between stations, mm
   * @param isLevel whether all stations are met as high as where the frame is lowest
   */
  BearingStuds(Wall wall, double bay, boolean isLevel) {
    this.wall = wall;
    this.bay = bay;
    this.isLevel = isLevel;
    this.edges = new UpperEdges(wall.frame().breadth());
  }

  /**
   * Those of the highest facet that are in line with studs of all others and have room for plywood
   * on either side, from end to end; where these leave more than a bay between them, those that
   * have it where something may meet them, then those in line; where these do too, all of it: what
   * meets the others between studs meets their plates.
   *
   * @param down from a frame's upper end to where something is wished to meet it, mm
   */
  List<Double> inLine(List<FacetLayout> held, double down) {
    List<List<Double>> each = held.stream().map(this::of).toList();
    List<Double> highest = each.get(each.size() - 1);
    List<Double> inLine =
        highest.stream().filter(stud -> each.stream().allMatch(studs -> has(studs, stud))).toList();
    List<Double> roomy =
        inLine.stream().filter(stud -> isOuter(stud, inLine) || hasRoom(stud, held)).toList();
    if (keepsBay(roomy, highest)) {
      return roomy;
    }
    List<Double> met = inLine;
    for (FacetLayout facet : held) {
      met = roomyAtOneLevel(facet, met, down);
    }
    return Stream.of(met, inLine)
        .filter(some -> keepsBay(some, highest))
        .findFirst()
        .orElse(highest);
  }

  /**
   * Those of some studs, the outer ones among them, that have room for plywood about the highest
   * level at which they leave no more than a bay between them; all of them where there is none.
   */
  private List<Double> roomyAtOneLevel(FacetLayout facet, List<Double> studs, double down) {
    return levels(facet, studs, down)
        .map(at -> free(facet, studs, at))
        .filter(some -> keepsBay(some, studs))
        .findFirst()
        .orElse(studs);
  }

  private List<Double> free(FacetLayout facet, List<Double> studs, double down) {
    return studs.stream()
        .filter(x -> isOuter(x, studs) || isFree(facet, x, end(facet, x, studs) - down))
        .toList();
  }

  private boolean isFree(FacetLayout facet, double stud, double v) {
    return standsAlone(facet, stud + wall.frame().breadth() / 2)
        && beside(facet, stud).noneMatch(span -> span.low() < v && v < span.high());
  }

  /** Where the frame ends for what meets one of some studs, v in mm. */
  private double end(FacetLayout facet, double stud, List<Double> studs) {
    return (isLevel ? studs.stream() : Stream.of(stud))
        .mapToDouble(one -> edges.end(facet, one))
        .min()
        .orElseThrow();
  }

  /** Where something may meet a frame, from where it is wished downward, mm below its end. */
  private Stream<Double> levels(FacetLayout facet, List<Double> studs, double down) {
    return Stream.concat(
            Stream.of(down),
            studs.stream()
                .flatMap(stud -> below(facet, stud, studs))
                .map(span -> span.high() + Tolerance.TOUCH))
        .filter(at -> at >= down && at <= down + LOWEST)
        .sorted();
  }

  /** Those of a facet that have room for plywood on either side. */
  List<Double> clear(FacetLayout facet) {
    return of(facet).stream().filter(stud -> hasRoom(stud, List.of(facet))).toList();
  }

  private static boolean isOuter(double stud, List<Double> all) {
    return stud == all.get(0) || stud == all.get(all.size() - 1);
  }

  private static boolean has(List<Double> studs, double stud) {
    return studs.stream().anyMatch(one -> Math.abs(one - stud) < FLUSH);
  }

  /** Whether plywood on its sides keeps clear of the inserts and the uprights of all facets. */
  private boolean hasRoom(double stud, List<FacetLayout> held) {
    double middle = stud + wall.frame().breadth() / 2;
    double asked = beside();
    return held.stream().allMatch(facet -> standsAlone(facet, middle))
        && held.stream()
            .allMatch(
                facet ->
                    facet.inserts().stream()
                        .map(Insert::centre)
                        .mapToDouble(centre -> facet.facet().plane().left() + centre.getX())
                        .allMatch(x -> !Tolerance.isLess(Math.abs(x - middle), asked)));
  }

  /** Whether no other upright is so near a stud that plywood finds no room between them. */
  private boolean standsAlone(FacetLayout facet, double middle) {
    double near = wall.frame().breadth() + wall.sheet().thickness();
    return facet.members().stream()
        .filter(member -> member.role().isUpright())
        .map(Member::box)
        .mapToDouble(box -> Math.abs(facet.facet().plane().left() + box.centre().x - middle))
        .allMatch(away -> away < FLUSH || away >= near);
  }

  /**
   * How much lower than wished something meets a facet between the inserts and the blocking that
   * are beside its stations' studs; 0 where none is near, or where there is no room between them.
   *
   * @param down from the frame's upper end to where its middle is wished, mm
   */
  double lower(FacetLayout facet, List<Double> stations, double down) {
    List<Span> taken = stations.stream().flatMap(stud -> below(facet, stud, stations)).toList();
    return levels(facet, stations, down)
        .filter(at -> taken.stream().noneMatch(span -> span.low() < at && at < span.high()))
        .findFirst()
        .map(at -> at - down)
        .orElse(0.0);
  }

  /** Where on a stud the middle of plywood may not lie, mm below where the frame ends. */
  private Stream<Span> below(FacetLayout facet, double stud, List<Double> studs) {
    double end = end(facet, stud, studs);
    return beside(facet, stud).map(span -> new Span(end - span.high(), end - span.low()));
  }

  /** Where on a stud the middle of plywood may not lie, v in mm. */
  private Stream<Span> beside(FacetLayout facet, double stud) {
    double near = wall.insertToTimber() + HALF;
    Stream<Span> inserts =
        facet.inserts().stream()
            .map(Insert::centre)
            .filter(centre -> isBeside(facet, centre, stud))
            .map(centre -> new Span(centre.getY() - near, centre.getY() + near));
    double left = stud - facet.facet().plane().left() - wall.sheet().thickness();
    double right = left + wall.frame().breadth() + 2 * wall.sheet().thickness();
    Stream<Span> blocking =
        facet.members().stream()
            .filter(member -> BETWEEN.contains(member.role()))
            .map(Member::box)
            .filter(box -> box.getMinX() < right && box.getMaxX() > left)
            .map(box -> new Span(box.getMinY() - HALF, box.getMaxY() + HALF));
    return Stream.concat(inserts, blocking);
  }

  private boolean isBeside(FacetLayout facet, Point centre, double stud) {
    double x = facet.facet().plane().left() + centre.getX();
    return Tolerance.isLess(Math.abs(x - stud - wall.frame().breadth() / 2), beside());
  }

  /** From the middle of a stud to an insert's centre that leaves room for plywood on it, mm. */
  private double beside() {
    return wall.frame().breadth() / 2 + wall.sheet().thickness() + wall.insertToTimber();
  }

  /**
   * Whether some of the studs reach as far as all of them, none further than a bay from the next.
   */
  private boolean keepsBay(List<Double> some, List<Double> all) {
    if (some.isEmpty()) {
      return all.isEmpty();
    }
    List<Double> stops = new ArrayList<>(some);
    stops.add(0, all.get(0));
    stops.add(all.get(all.size() - 1));
    return SupportSite.widest(stops) <= bay;
  }

  /** Those of a facet that reach what lies along its upper edge, which may slant or step. */
  List<Double> of(FacetLayout facet) {
    double left = facet.facet().plane().left();
    return facet.members().stream()
        .filter(
            member -> member.role() == MemberRole.STUD && member.direction().equals(Direction.UP))
        .filter(member -> member.isSquare() || member.hasSquareSides())
        .filter(member -> edges.isReached(facet, member))
        .map(Member::box)
        .map(Envelope::getMinX)
        .map(along -> left + along)
        .sorted()
        .toList();
  }

  /** How much shorter the frame is at a stud than where it is longest, mm. */
  double fall(FacetLayout facet, double stud) {
    return edges.fall(facet, stud);
  }
}
