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
 * Neighbours are found in an R-tree, so that cost grows about as the number of things. Near a
 * sheet's corner, as far as the sheet is thick counts as backed ({@link
 * plycrag.check.clearance.SeamBacked}). What lies before and behind a facet is judged in the room,
 * against the sheets of all others ({@link plycrag.check.clearance.Faces}).
 *
 * <p>Leaves out: strength, and what the wall as a whole does in its room. Sees {@code check.rule}
 * and the layout.
 */
package plycrag.check.clearance;
