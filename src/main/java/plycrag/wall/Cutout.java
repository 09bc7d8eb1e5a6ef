package plycrag.wall;

import org.locationtech.jts.geom.Polygon;

/**
 * An opening in a facet: a window, a door, a post, a socket.
 *
 * @param name printed beside it
 * @param shape in (u, v); a circle has so many sides that none is 0.05 mm inside it
 * @param filled whether something fills it, so that nobody can be caught in it
 */
public record Cutout(String name, Polygon shape, boolean filled) {

  /** Whether its sides run level and straight up, so that timber can lie flush with them. */
  public boolean isRectangle() {
    return shape.isRectangle();
  }
}
