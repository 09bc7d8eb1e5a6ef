package plycrag.layout.pattern;

import java.util.List;
import plycrag.layout.frame.FramedFacet;
import plycrag.wall.Clearances;
import plycrag.wall.Inserts;
import plycrag.wall.Wall;

/**
 * All on and behind a facet that may stand in the way of inserts.
 *
 * @param wall the wall
 * @param frame the facet with its pieces and members
 * @param neighbours the members of other facets
 * @param screws those through the sheets; empty before they are placed
 */
public record InsertSite(
    Wall wall, FramedFacet frame, List<Neighbour> neighbours, List<Screw> screws) {
  public InsertSite {
    neighbours = List.copyOf(neighbours);
    screws = List.copyOf(screws);
  }

  Inserts insert() {
    return wall.inserts();
  }

  Clearances clearance() {
    return wall.clearance();
  }

  InsertSite with(List<Screw> others) {
    return new InsertSite(wall, frame, neighbours, others);
  }
}
