package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.support.PlacedMember;
import plycrag.wall.Facet;
import plycrag.wall.FacetAtAngle;

/** All members of a wall as lines, at one of the angles that a hinged wall is used at. */
final class MemberAxes {
  private final Map<String, MemberAxis> byMark = new LinkedHashMap<>();
  private final Map<String, FacetAtAngle> facets = new LinkedHashMap<>();

  /** Of a layout; the angle is without meaning where nothing swings. */
  MemberAxes(Layout layout, double angle) {
    double thickness = layout.wall().sheet().thickness();
    for (List<FacetLayout> run : layout.runs()) {
      List<Facet> its = run.stream().map(FacetLayout::facet).toList();
      List<FacetAtAngle> turned = FacetAtAngle.of(layout.wall(), its, angle);
      for (int i = 0; i < run.size(); i++) {
        FacetAtAngle facet = turned.get(i);
        facets.put(facet.facet().name(), facet);
        for (Member member : run.get(i).members()) {
          put(MemberAxis.of(member, facet.facet().name(), thickness, facet::at));
        }
      }
    }
    for (PlacedMember placed : layout.standing()) {
      put(MemberAxis.of(placed.member(), "", 0, placed.plane()::toRoom));
    }
  }

  private void put(MemberAxis axis) {
    byMark.put(axis.mark(), axis);
  }

  MemberAxis of(String mark) {
    return byMark.get(mark);
  }

  List<MemberAxis> all() {
    return new ArrayList<>(byMark.values());
  }

  /** Those of a facet. */
  Stream<MemberAxis> of(Facet facet) {
    return byMark.values().stream().filter(axis -> axis.facet().equals(facet.name()));
  }

  /** How a facet stands. */
  FacetAtAngle facet(Facet facet) {
    return facets.get(facet.name());
  }
}
