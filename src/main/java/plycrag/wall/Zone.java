package plycrag.wall;

import org.locationtech.jts.geom.Polygon;
import plycrag.wall.GivenZone.Points;

/**
 * A part of a facet with a pattern of its own.
 *
 * @param facet the facet's name
 * @param name printed beside it
 * @param shape in (u, v); it may go beyond the facet
 * @param points what the pattern tells the places of
 * @param pattern how they are set out
 */
public record Zone(String facet, String name, Polygon shape, Points points, Pattern pattern) {

  public static Zone of(GivenZone zone) {
    return new Zone(
        zone.facet(),
        zone.name(),
        FacetShapes.polygon(zone.shape()),
        zone.points(),
        zone.pattern());
  }
}
