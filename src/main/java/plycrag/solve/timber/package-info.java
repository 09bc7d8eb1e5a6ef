/**
 * Strength of timber and of its joints by EN 1995-1-1: single formulas, values in, values out.
 * Knows no wall, no member's name, no catalogue and no default.
 *
 * <p><b>Units</b>: mm, N, N mm, N/mm², kg/m³, degrees.
 *
 * <p>Needs sections, stresses, characteristic values ({@link plycrag.solve.timber.TimberStrength})
 * and how they become design values ({@link plycrag.solve.timber.DesignBasis}). Each class is one
 * check of the standard and says its clause, formula and units. What comes out is a {@link
 * plycrag.solve.timber.Worked}: the formula with every symbol's value, so that a printed line can
 * be done again by hand. Members' checks come out as utilisations of what may be; joints' as what
 * they bear, characteristic unless they say otherwise, one for each way to fail.
 *
 * <p>Where printings of the standard differ the safer is taken, and the class says so. No rope
 * effect unless it is asked for ({@link plycrag.solve.timber.RopeEffect}); k_cr, k_c,90 and lengths
 * of buckling are told by the caller.
 *
 * <p>Guarantees the same bits everywhere: powers and trigonometry are {@link
 * plycrag.geometry.Trig}'s. Leaves out block shear (Annex A), connectors, distances between
 * fasteners ({@code solve.fixing} has them) and the choice of what to check.
 */
package plycrag.solve.timber;
