package plycrag.layout.nest;

import org.locationtech.jts.geom.Polygon;

/**
 * What is to be cut from a sheet.
 *
 * @param mark the piece's mark
 * @param outline in the facet's (u, v), mm
 */
public record Blank(String mark, Polygon outline) {}
