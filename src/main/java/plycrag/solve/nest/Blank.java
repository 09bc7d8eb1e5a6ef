package plycrag.solve.nest;

import org.locationtech.jts.geom.Polygon;

/**
 * What is to be cut from a sheet.
 *
 * @param mark the piece's mark
 * @param outline in the facet's (u, v), mm
 * @param lengthAcross whether the sheet's length runs along u as the piece stands on the wall, or
 *     else along v
 */
public record Blank(String mark, Polygon outline, boolean lengthAcross) {}
