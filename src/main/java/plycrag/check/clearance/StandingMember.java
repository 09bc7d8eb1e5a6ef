package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Solid;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.support.PlacedMember;
import plycrag.wall.Facet;

/**
 * A member as it stands in the room.
 *
 * @param facet of whose frame it is; empty for what holds frames up
 * @param run the number of the run that it belongs to, from 0
 * @param solid its body
 */
record StandingMember(Member member, Optional<Facet> facet, int run, Solid solid) {

  /** All of a wall, those of frames first. */
  static List<StandingMember> of(Layout layout) {
    double thickness = layout.wall().sheet().thickness();
    List<StandingMember> all = new ArrayList<>();
    List<List<FacetLayout>> runs = layout.runs();
    for (int run = 0; run < runs.size(); run++) {
      for (FacetLayout facet : runs.get(run)) {
        for (Member member : facet.members()) {
          Solid solid = member.body(thickness).mapped(facet.facet().plane()::toRoom);
          all.add(new StandingMember(member, Optional.of(facet.facet()), run, solid));
        }
      }
    }
    for (PlacedMember placed : layout.standing()) {
      all.add(new StandingMember(placed.member(), Optional.empty(), placed.run(), placed.body()));
    }
    return all;
  }

  /** The smallest box around it, seen from in front of the wall. */
  Envelope shadow() {
    return solid.elevation();
  }

  boolean isSupport() {
    return facet.isEmpty();
  }

  boolean isOnFacetOf(StandingMember other) {
    return facet.isPresent() && facet.equals(other.facet);
  }
}
