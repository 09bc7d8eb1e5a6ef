/**
 * Pieces on stock sheets, with every hole in the place where it is drilled, and what a machine does
 * to each face.
 *
 * <p>Needs facets with everything on them, and what the file says of stock sheets and the machine.
 * Which sheets are taken decides where holes lie on them; so sizes, what is at hand and what sheets
 * cost beside each other stand in the file, and a price list only prices what was taken.
 *
 * <ol>
 *   <li>Pieces are laid by {@code solve.nest}; holes follow by the {@link
 *       plycrag.solve.nest.Placement} of their piece ({@link plycrag.layout.sheets.SheetPlan}).
 *   <li>Holes that are more than a bore: countersinks, as deep as their width wants of a tapered
 *       tool ({@link plycrag.layout.sheets.CountersinkDepth}), and recesses for flanges ({@link
 *       plycrag.layout.sheets.Recesses}).
 *   <li>Faces in the order of work ({@link plycrag.layout.sheets.WorkedFace}), with marks ({@link
 *       plycrag.layout.sheets.EngravedMarks}) and pins ({@link plycrag.layout.sheets.PinHoles}).
 *   <li>Cover strips, then gussets, from what the pieces leave over ({@link
 *       plycrag.layout.sheets.OffcutParts}): they move no piece, and a further sheet comes only
 *       where no offcut takes them. Blocking is never cut from offcuts, as its edge would be
 *       screwed into.
 * </ol>
 *
 * <p>A recess is a hole of its own kind, from the back, and belongs to a worked face and not to the
 * sheet: where the back lies up it is cut in the one setting, else before the sheet is turned over.
 * What goes on from flanges (clearances, set-out) does not know it. Marks are engraved in the face
 * that lies up, whichever it is: one face, one setting up. Who wants them behind the wall and the
 * front up has the back worked first, with two pins in the waste on the sheet's upright middle
 * line: turned over about it, the pins find the same holes in the board, so that no error of the
 * sheet's size or edges moves anything. Room for marks is found here, since the rule, the programs
 * and the self-check must agree on it.
 *
 * <p>Guarantees: every piece lies on one sheet, every hole of it with it. Leaves out: how a hole is
 * made, and whether a tool exists. Sees the rooms up to {@code layout.joints}.
 */
package plycrag.layout.sheets;
