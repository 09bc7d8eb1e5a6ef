package plycrag.layout;

import java.util.List;
import plycrag.params.ClearanceParameters;
import plycrag.params.InsertParameters;
import plycrag.wall.Wall;

/**
 * All on and behind a facet that may stand in the way of inserts.
 *
 * @param wall the wall
 * @param frame the facet with its pieces and members
 * @param neighbours the members of other facets
 * @param screws those through the sheets; empty before they are placed
 */
record InsertSite(Wall wall, FramedFacet frame, List<Neighbour> neighbours, List<Screw> screws) {
  InsertSite {
    neighbours = List.copyOf(neighbours);
    screws = List.copyOf(screws);
  }

  InsertParameters insert() {
    return wall.inserts();
  }

  ClearanceParameters clearance() {
    return wall.clearance();
  }

  InsertSite with(List<Screw> others) {
    return new InsertSite(wall, frame, neighbours, others);
  }
}
