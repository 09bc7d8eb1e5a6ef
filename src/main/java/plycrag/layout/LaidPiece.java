package plycrag.layout;

import plycrag.layout.nest.Placement;

/**
 * A piece on its sheet.
 *
 * @param piece what is cut
 * @param facet the facet that it belongs to, by name
 * @param placement where it lies
 */
public record LaidPiece(Piece piece, String facet, Placement placement) {}
