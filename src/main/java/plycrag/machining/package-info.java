/**
 * From an approved layout to the moves of a router.
 *
 * <p>Takes an {@link plycrag.check.ApprovedLayout} only, so that nothing refused can be machined;
 * {@code check.making} has seen to it that every hole has a tool. A hole is drilled at its centre
 * with a tool of its own diameter, in one go or in pecks, or bored in a spiral with a narrower end
 * mill (Spiral), with arcs or with straight moves that stay within a stated error of them. Drills
 * come before end mills; the order of one tool's holes is a short way from the sheet's corner
 * (TourSearch), never longer than nearest neighbour's. Heads of screws are let in by a countersink,
 * as deep as its point is as wide as they are; recesses for flanges are cleared with an end mill in
 * layers, ring by ring (Pocket), from the back and with the holes where these are made from there;
 * marks of pieces are engraved in single strokes (StrokeFont) where layout found room for them, in
 * the face that lies up or in the back; a sheet that is then worked on both faces has programs for
 * each ({@link plycrag.layout.sheets.WorkedFace}): first the back with holes for two pins on the
 * line about which it is turned over, last what cuts pieces out. X and Y stay zero where they were.
 * Places are counted from the corner of the sheet that the machine asks for. On request the first
 * end mill that reaches then cuts openings and pieces out, beside their sides by its radius, in
 * passes, held by tabs or a skin (OutlineMoves). Ways over places to keep out of are lifted to the
 * safe height (LiftedOver), which makes them longer in a tour. A page for each sheet and face tells
 * who sets up the machine what to load, zero and measure (SetUpSheets).
 *
 * <p>Guarantees: the first motion raises Z alone; the spindle turns before any cut; nothing moves
 * across below the clearance height but to cut. Leaves out: how a controller spells it.
 */
package plycrag.machining;
