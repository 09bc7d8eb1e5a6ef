package plycrag.layout.joints;

import java.util.stream.Stream;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Rod;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.wall.Inserts;
import plycrag.wall.Wall;

/** What is in a facet's sheets and reaches out of them behind: screws, and inserts with bolts. */
public final class SheetFasteners {
  /** A flange and the heads of its screws reach no further from the sheet (common practice), mm. */
  private static final double FLANGE = 3;

  private SheetFasteners() {}

  /** The screws through sheets, from the face of the sheet. */
  public static Stream<MarkedBody> screws(Wall wall, FacetLayout facet) {
    double length = wall.screws().length();
    double diameter = wall.screws().diameter();
    return facet.screws().stream()
        .map(
            screw ->
                new MarkedBody(
                    screw.mark(), rod(facet, screw.centre(), 0, length, diameter).body()));
  }

  /** The flanges of inserts and the room for the ends of bolts, behind the sheet. */
  public static Stream<MarkedBody> inserts(Wall wall, FacetLayout facet) {
    double back = wall.sheet().thickness();
    Inserts inserts = wall.inserts();
    return facet.inserts().stream()
        .flatMap(
            insert ->
                Stream.of(
                        rod(facet, insert.centre(), back, FLANGE, inserts.body().flange()),
                        rod(
                            facet,
                            insert.centre(),
                            back,
                            inserts.bolt().reach(),
                            inserts.bolt().zone()))
                    .map(rod -> new MarkedBody(insert.mark(), rod.body())));
  }

  /** Square to a facet, from so far behind its face away from the climber. */
  private static Rod rod(
      FacetLayout facet, Point centre, double behind, double length, double diameter) {
    Vector3 from = facet.facet().plane().toRoom(new Vector3(centre.getX(), centre.getY(), behind));
    return new Rod(from, facet.facet().plane().normal().times(-1), length, diameter);
  }
}
