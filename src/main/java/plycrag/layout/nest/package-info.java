/**
 * Every blank on a stock sheet. Knows outlines and sheets, nothing of walls.
 *
 * <p>One blank a sheet, its lower left corner on the sheet's, front face up, turned as it stands on
 * the wall. Guarantees: every blank is placed once; the map from the facet's (u, v) to the sheet's
 * (x, y) is rigid. Leaves out: whether the sheet is large enough, which the tiling sees to.
 */
package plycrag.layout.nest;
