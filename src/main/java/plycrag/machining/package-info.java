/**
 * From an approved layout to the moves of a router, and the sheets by which it is set up.
 *
 * <p>Needs an {@link plycrag.check.ApprovedLayout}, so that nothing refused can be machined; {@code
 * check.making} has seen to it that every hole has a tool. Programs are made face by face ({@link
 * plycrag.layout.sheets.WorkedFace}); places are counted from the corner of the sheet that the
 * machine asks for.
 *
 * <ol>
 *   <li>A hole is drilled at its centre with a tool of its own diameter, in one go or in pecks, or
 *       bored in a spiral with a narrower end mill ({@link plycrag.machining.Spiral}), with arcs or
 *       with straight moves that stay within a stated error of them.
 *   <li>Heads of screws are let in by a countersink, as deep as its point is as wide as they are;
 *       recesses are cleared with an end mill in layers, ring by ring ({@link
 *       plycrag.machining.Pocket}); marks are engraved stroke by stroke ({@link
 *       plycrag.machining.MarkStrokes}).
 *   <li>Drills come before end mills; one tool's holes follow each other on a short way from the
 *       sheet's corner ({@link plycrag.machining.HoleTour}, by {@code solve.tour}).
 *   <li>On request the first end mill that reaches cuts openings, then pieces out, in passes, held
 *       by tabs or a skin ({@link plycrag.machining.OutlineMoves}): along sides moved by the
 *       cutter's radius with sharp corners ({@link plycrag.geometry.Contours}) and not along a
 *       buffer, so that every number in a program is one of ours.
 *   <li>Ways over places to keep out of are lifted to the safe height after the tour is found, and
 *       the tour counts each such lift as the way up and down that it is ({@link
 *       plycrag.machining.LiftedOver}).
 *   <li>A page for each sheet and face tells what to load, zero and measure ({@link
 *       plycrag.machining.SetUpSheets}).
 * </ol>
 *
 * <p>Guarantees: the first motion raises Z alone; the spindle turns before any cut; nothing moves
 * across below the clearance height but to cut. Moves are canonical; whether a controller follows
 * arcs is known here, since an arc is a move. Leaves out: how a controller spells it ({@code
 * files.ngc}), and clamps when pieces are laid. Sees {@code check}, {@code document} and {@code
 * solve.tour}.
 */
package plycrag.machining;
