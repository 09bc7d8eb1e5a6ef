/**
 * What must keep clear of what on a facet, one class a rule.
 *
 * <p>Needs a layout. What inserts keep clear of is a list in {@code layout.pattern}, of which
 * {@link plycrag.check.clearance.InsertClear} makes a rule each; rules about screws share {@link
 * plycrag.check.clearance.ScrewRule}.
 *
 * <p>Guarantees: distances are measured between the things themselves, a flange's rim and a
 * member's side, not between their centres, and count below zero where they overlap. A barrel ends
 * inside the sheet, in a recess too ({@link plycrag.check.clearance.BarrelAgainstThickness}).
 * Neighbours are found in an R-tree, so that cost grows about as the number of things. At a rim
 * that square timber cannot follow, as much of an edge as the sheet is thick counts as backed
 * ({@link plycrag.check.clearance.SeamBacked}).
 *
 * <p>Leaves out: strength, and places beside the facet. Sees {@code check.rule} and the layout.
 */
package plycrag.check.clearance;
