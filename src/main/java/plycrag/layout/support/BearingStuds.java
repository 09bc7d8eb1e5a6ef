package plycrag.layout.support;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Direction;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.pattern.Insert;
import plycrag.solve.support.SupportSite;
import plycrag.wall.Wall;

/** The studs at which a support may stand: left sides, x of the run, ascending, mm. */
final class BearingStuds {
  private static final double FLUSH = 1;

  private final Wall wall;
  private final double bay;

  /**
   * @param bay the greatest distance between stations, mm
   */
  BearingStuds(Wall wall, double bay) {
    this.wall = wall;
    this.bay = bay;
  }

  /**
   * Those of the highest facet that are in line with studs of all others and have room for plywood
   * on either side; where these leave more than a bay between them, those in line; where these do
   * too, all of it: what meets the others between studs meets their plates.
   */
  List<Double> inLine(List<FacetLayout> held) {
    List<List<Double>> each = held.stream().map(this::of).toList();
    List<Double> highest = each.get(each.size() - 1);
    List<Double> inLine =
        highest.stream().filter(stud -> each.stream().allMatch(studs -> has(studs, stud))).toList();
    List<Double> roomy =
        inLine.stream().filter(stud -> isOuter(stud, inLine) || hasRoom(stud, held)).toList();
    if (keepsBay(roomy, highest)) {
      return roomy;
    }
    return keepsBay(inLine, highest) ? inLine : highest;
  }

  private static boolean isOuter(double stud, List<Double> all) {
    return stud == all.get(0) || stud == all.get(all.size() - 1);
  }

  private static boolean has(List<Double> studs, double stud) {
    return studs.stream().anyMatch(one -> Math.abs(one - stud) < FLUSH);
  }

  /** Whether plywood on its sides keeps clear of the inserts of all facets. */
  private boolean hasRoom(double stud, List<FacetLayout> held) {
    double middle = stud + wall.frame().breadth() / 2;
    double asked =
        wall.frame().breadth() / 2 + wall.sheet().thickness() + wall.insertToTimber() - FLUSH;
    return held.stream()
        .allMatch(
            facet ->
                facet.inserts().stream()
                    .map(Insert::centre)
                    .mapToDouble(centre -> facet.facet().plane().left() + centre.getX())
                    .allMatch(x -> Math.abs(x - middle) >= asked));
  }

  /** Whether some of the studs reach as far as all of them, none further than a bay from the next. */
  private boolean keepsBay(List<Double> some, List<Double> all) {
    if (some.isEmpty()) {
      return all.isEmpty();
    }
    List<Double> stops = new ArrayList<>(some);
    stops.add(0, all.get(0));
    stops.add(all.get(all.size() - 1));
    return SupportSite.widest(stops) <= bay;
  }

  /** Those of a facet that reach the plate on top. */
  List<Double> of(FacetLayout facet) {
    double plate =
        facet.members().stream()
            .filter(member -> member.role() == MemberRole.PLATE)
            .mapToDouble(member -> member.box().getMinY())
            .max()
            .orElse(0);
    double left = facet.facet().plane().left();
    return facet.members().stream()
        .filter(
            member -> member.role() == MemberRole.STUD && member.direction().equals(Direction.UP))
        .filter(member -> member.isSquare() || member.hasSquareSides())
        .filter(member -> member.box().getMaxY() >= plate - FLUSH)
        .map(Member::box)
        .map(Envelope::getMinX)
        .map(along -> left + along)
        .sorted()
        .toList();
  }
}
