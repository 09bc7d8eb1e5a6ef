package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.geometry.Solid;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.standing.FallZone;
import plycrag.layout.standing.Mass;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.SupportPart;
import plycrag.layout.support.WallSupport;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Wall;
import plycrag.wall.room.Supports;

/**
 * A wall on posts of its own does not tip over its rails.
 *
 * <p>EN 1990 Table A1.2(A), recommended values: 0.9 of the weight against 1.5 times what tips it.
 * What tips it is one climber, 0.8 kN (EN 12572-2:2017 4.6), doubled since the load comes suddenly,
 * at the outermost edge of the face.
 */
public final class StandsFirm implements Rule {
  /** Standard gravity, m/s². */
  private static final double GRAVITY = 9.80665;

  private static final double HOLDING = 0.9;
  private static final double TIPPING = 1.5;
  private static final double CLIMBER = 800;
  private static final double SUDDEN = 2;
  private static final double METRE = 1000;

  @Override
  public String name() {
    return "stands-firm";
  }

  @Override
  public String promise() {
    return "A wall on posts of its own does not tip over with a climber on its outermost edge.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (SupportPart part : layout.support().map(WallSupport::parts).orElse(List.of())) {
      if (part.asked().hasPosts() && !part.members().isEmpty()) {
        judge(layout, part, findings);
      }
    }
    return findings;
  }

  private void judge(Layout layout, SupportPart part, List<Finding> findings) {
    Wall wall = layout.wall();
    List<FacetLayout> held =
        layout.facets().stream()
            .filter(facet -> part.facets().contains(facet.facet().name()))
            .toList();
    Mass mass = Mass.ofSupport(wall, part.members());
    for (FacetLayout facet : held) {
      mass = mass.plus(Mass.ofFrame(wall, facet)).plus(Mass.ofSheets(wall, facet));
    }
    double centre = part.axes().fromRoom(mass.centre()).y();
    double toe = ends(part, 1);
    double heel = -ends(part, -1);
    String table = wall.supports().table(part.facets().get(0));
    double edge = FallZone.of(layout, held.stream().map(FacetLayout::facet).toList()).outermost();
    double weight = HOLDING * mass.kilograms() * GRAVITY;
    double load = TIPPING * SUDDEN * CLIMBER;
    double forward = weight * (toe - centre) - load * Math.max(0, edge - toe);
    if (forward < 0) {
      double needed = (load * edge + weight * centre) / (load + weight);
      findings.add(
          finding(
              forward,
              wall(table, part) + " tips forward over the ends of its rails",
              further(table, wall.tape().snapUp(Math.max(needed, centre)), wall.tape())));
    }
    double backward = weight * (centre - heel);
    if (backward < 0) {
      findings.add(
          finding(
              backward,
              wall(table, part) + " tips backward over the ends of its rails",
              "set the posts further behind (" + table + " behind)"));
    }
  }

  /** The wall, or the facets of it that have a support of their own. */
  private static String wall(String table, SupportPart part) {
    return Supports.isOwn(table) ? "facet " + String.join(", ", part.facets()) : "the wall";
  }

  private static String further(String table, double front, Tape tape) {
    return "let the rails reach "
        + tape.text(front)
        + " in front of the wall's foot "
        + Cure.length(table + " front", front, tape).words();
  }

  /** How far the rails reach toward the climber, or away with a sign of -1, in the run, mm. */
  private static double ends(SupportPart part, int sign) {
    double end = Double.NEGATIVE_INFINITY;
    for (PlacedMember placed : part.members()) {
      if (placed.member().role() == MemberRole.RAIL) {
        Solid body = placed.body().mapped(part.axes()::fromRoom);
        end =
            Math.max(
                end, body.near().stream().mapToDouble(corner -> sign * corner.y()).max().orElse(0));
      }
    }
    return end;
  }

  private Finding finding(double moment, String sentence, String suggestion) {
    double newtonMetres = moment / METRE;
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            sentence
                + " by "
                + Decimal.of(-newtonMetres, 0)
                + " Nm with one climber on its outermost edge",
            suggestion);
  }
}
