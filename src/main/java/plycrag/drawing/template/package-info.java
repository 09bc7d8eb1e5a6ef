/**
 * What is true size: sheets for a router shop, templates and jigs to drill by hand, tiles for a
 * printer.
 *
 * <p>Needs a checked layout and the paper of the user's printer. What guides a drill by hand shows
 * inserts alone: clearance holes for screws are the machine's, and only where the frame is set by
 * the holes.
 *
 * <ol>
 *   <li>Sheets that are drilled alike share a template ({@link
 *       plycrag.drawing.template.TemplateSheet}).
 *   <li>Where holes stand at one pitch a strip jig serves ({@link
 *       plycrag.drawing.template.JigPlan}, {@link plycrag.drawing.template.StripJig}), the same one
 *       for as many sheets as it can.
 *   <li>Else tiles, in bands and the fewest that bands allow, found exactly ({@link
 *       plycrag.drawing.template.TilePlan}). They need not touch, since each has crosses that a
 *       tape can place ({@link plycrag.drawing.template.AlignmentCrosses}).
 * </ol>
 *
 * <p>Guarantees: a bar to measure the print by on all that is printed; every hole whole on one
 * tile; {@link plycrag.drawing.template.SheetCut} has each cut and hole once, on the layer of its
 * operation, and all else on layers that say so. What a saw cuts, what is cut after the sheet was
 * turned over, and a sheet's own edge are no cuts: a shop that profiled them would take the kerf
 * off a piece, or run into its clamps ({@link plycrag.drawing.template.CutLines}). Leaves out:
 * whether a printer keeps to size. Sees {@code drawing.pen} and {@code drawing.flat}.
 */
package plycrag.drawing.template;
