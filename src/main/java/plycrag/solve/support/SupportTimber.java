package plycrag.solve.support;

import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.FacetPlane;

/**
 * A length of timber of a support.
 *
 * @param use what it is for
 * @param plane of one of its sides
 * @param direction the way it runs in that plane
 * @param outline of that side, in (u, v) of the plane
 * @param depth how far it reaches behind the plane, mm
 */
public record SupportTimber(
    TimberUse use, FacetPlane plane, Direction direction, Polygon outline, double depth) {}
