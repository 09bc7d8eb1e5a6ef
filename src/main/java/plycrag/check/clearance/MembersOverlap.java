package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Fixity;
import plycrag.layout.support.PlacedMember;

/** No two members take the same space. */
public final class MembersOverlap implements Rule {
  private static final String NAME = "members-overlap";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String promise() {
    return "No two members of the frame take the same space.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Body> bodies = bodies(layout);
    SpatialIndex<Integer> index =
        new SpatialIndex<>(
            IntStream.range(0, bodies.size()).boxed().toList(), at -> bodies.get(at).shadow());
    List<Finding> findings = new ArrayList<>();
    for (int at = 0; at < bodies.size(); at++) {
      for (int other : index.near(bodies.get(at).shadow(), 0)) {
        if (other > at && mayOverlap(bodies.get(at), bodies.get(other))) {
          addOverlap(bodies.get(at), bodies.get(other), layout, findings);
        }
      }
    }
    return findings;
  }

  /**
   * A member as it stands in the room.
   *
   * @param shadow the smallest box around it, seen from in front of the wall
   */
  private record Body(Member member, FacetLayout facet, Solid solid, Envelope shadow) {}

  private static List<Body> bodies(Layout layout) {
    double thickness = layout.wall().sheet().thickness();
    List<Body> bodies = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      for (Member member : facet.members()) {
        Solid solid = member.body(thickness).mapped(facet.facet().plane()::toRoom);
        bodies.add(new Body(member, facet, solid, shadow(solid)));
      }
    }
    for (PlacedMember placed : layout.standing()) {
      Solid solid = placed.body();
      bodies.add(new Body(placed.member(), layout.facets().get(0), solid, shadow(solid)));
    }
    return bodies;
  }

  private static Envelope shadow(Solid solid) {
    Envelope shadow = new Envelope();
    solid.near().forEach(corner -> shadow.expandToInclude(corner.x(), corner.z()));
    solid.far().forEach(corner -> shadow.expandToInclude(corner.x(), corner.z()));
    return shadow;
  }

  /**
   * Whether the boxes around two members of one facet share more than the tolerance each way: the
   * way out of a body is no longer than that out of its box. Most neighbours only touch.
   */
  private static boolean mayOverlap(Body body, Body other) {
    if (!areOnOneFacet(body, other)) {
      return true;
    }
    Envelope shared = body.member().shadow().intersection(other.member().shadow());
    return Math.min(shared.getWidth(), shared.getHeight()) > Tolerance.TOUCH;
  }

  private static boolean areOnOneFacet(Body body, Body other) {
    return !isSupport(body)
        && !isSupport(other)
        && body.facet().facet().name().equals(other.facet().facet().name());
  }

  private static boolean isSupport(Body body) {
    return body.member().fixity() == Fixity.SUPPORT;
  }

  private static void addOverlap(Body body, Body other, Layout layout, List<Finding> findings) {
    if (body.solid().overlapsByMoreThan(Tolerance.TOUCH, other.solid())) {
      double depth = body.solid().overlap(other.solid());
      Report report = new Report(NAME, body.facet().facet().name(), layout.wall().tape());
      Measure measure = new Measure(-depth, 0);
      findings.add(
          report.error(
              new Report.Thing(body.member().mark(), middle(body, other)),
              other.member().mark(),
              measure,
              body.member().mark() + " " + report.standing(measure, other.member().mark()),
              suggestion(body.member(), other.member(), report)));
    }
  }

  /** What would mend it: of an opening's timber in what backs a seam, where the opening may go. */
  private static String suggestion(Member member, Member other, Report report) {
    if (isOnRail(member, other) || isOnRail(other, member)) {
      return "raise the wall on to the rails under its posts ([wall] raise)";
    }
    if (member.fixity() == Fixity.SUPPORT || other.fixity() == Fixity.SUPPORT) {
      return "set the support further back ([support] behind) or its stations elsewhere"
          + " ([support] bay), or choose another kind ([support] kind)";
    }
    boolean isOther = other.fixity() == Fixity.OPENING;
    Member around = isOther ? other : member;
    Member fixed = isOther ? member : other;
    if (around.fixity() != Fixity.OPENING || fixed.fixity() == Fixity.OPENING) {
      return "make the facet larger or smaller, the studs further apart or the sheets' least width"
          + " greater";
    }
    Envelope shared = around.box().intersection(fixed.box());
    boolean sideways = around.role().isUpright();
    double by = report.tape().snapUp(sideways ? shared.getWidth() : shared.getHeight());
    double away =
        sideways
            ? around.box().centre().x - fixed.box().centre().x
            : around.box().centre().y - fixed.box().centre().y;
    String way =
        sideways ? (away > 0 ? "to the right" : "to the left") : (away > 0 ? "up" : "down");
    return "move the opening "
        + way
        + " by "
        + report.tape().text(by)
        + ", so that the timber round it stands beside "
        + fixed.mark();
  }

  /** Whether a member is a frame's, and the other a rail on which that frame stands. */
  private static boolean isOnRail(Member member, Member other) {
    return member.fixity() != Fixity.SUPPORT && other.role() == MemberRole.RAIL;
  }

  /** The middle of what two members of one facet share; of the first one at a fold. */
  private static Point middle(Body body, Body other) {
    Envelope shared = body.member().shadow().intersection(other.member().shadow());
    boolean together = areOnOneFacet(body, other) && !shared.isNull();
    Envelope box = together ? shared : body.member().shadow();
    return Shapes.point(box.centre().x, box.centre().y);
  }
}
