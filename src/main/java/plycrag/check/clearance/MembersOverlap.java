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
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.frame.Member;
import plycrag.wall.Facet;

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
    List<StandingMember> all = StandingMember.of(layout);
    SpatialIndex<Integer> index =
        new SpatialIndex<>(
            IntStream.range(0, all.size()).boxed().toList(), at -> all.get(at).shadow());
    List<Overlap> overlaps = new ArrayList<>();
    for (int at = 0; at < all.size(); at++) {
      for (int other : index.near(all.get(at).shadow(), 0)) {
        if (other > at && mayOverlap(all.get(at), all.get(other))) {
          Overlap.of(all.get(at), all.get(other)).ifPresent(overlaps::add);
        }
      }
    }
    OverlapCure cure = new OverlapCure(layout, overlaps);
    return overlaps.stream().map(overlap -> finding(overlap, cure, layout)).toList();
  }

  /**
   * Whether the boxes around two members of one facet share more than the tolerance each way: the
   * way out of a body is no longer than that out of its box. Most neighbours only touch.
   */
  private static boolean mayOverlap(StandingMember one, StandingMember other) {
    if (!one.isOnFacetOf(other)) {
      return true;
    }
    Envelope shared = one.member().shadow().intersection(other.member().shadow());
    return Math.min(shared.getWidth(), shared.getHeight()) > Tolerance.TOUCH;
  }

  private static Finding finding(Overlap overlap, OverlapCure cure, Layout layout) {
    StandingMember one = overlap.one();
    Member other = overlap.other().member();
    Facet facet = one.facet().orElse(layout.facets().get(0).facet());
    Report report = new Report(NAME, facet.name(), layout.wall().tape());
    Measure measure = new Measure(-overlap.depth(), 0);
    return report.error(
        new Report.Thing(one.member().mark(), middle(overlap)),
        other.mark(),
        measure,
        one.member().mark() + " " + report.standing(measure, other.mark()),
        cure.of(overlap));
  }

  /** The middle of what two members of one facet share; of the first one at a fold. */
  private static Point middle(Overlap overlap) {
    StandingMember one = overlap.one();
    Envelope shared = one.member().shadow().intersection(overlap.other().member().shadow());
    boolean together = one.isOnFacetOf(overlap.other()) && !shared.isNull();
    Envelope box = together ? shared : one.member().shadow();
    return Shapes.point(box.centre().x, box.centre().y);
  }
}
