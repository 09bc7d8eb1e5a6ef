/**
 * Reads programs back before they are released, plays them on a model of the sheet and holds what
 * they make against what is to be made.
 *
 * <p>Needs all programs of one face of a sheet as texts, as they will be on the disk, with their
 * tools; {@link plycrag.proof.replay.Abilities}, what the controller understands; a {@link
 * plycrag.proof.replay.Bench}, the machine with the sheet on it; and what is {@link
 * plycrag.proof.replay.Expected}, holes and contours as plain values. Knows text, holes and
 * outlines only, so that no mistake of a maker or writer can be made twice the same way.
 *
 * <ol>
 *   <li>{@link plycrag.proof.replay.ProgramReader} takes lines apart and obeys them. Modes, cycles,
 *       arcs and the order on a line follow NISTIR 6556 (the RS274/NGC interpreter), read strictly:
 *       capitals, no sign but minus, no word without a meaning, nothing that the dialect does not
 *       state, every mode stated before the first motion, a comment only at the end of its line,
 *       nothing after the end.
 *   <li>What a controller or its owner wants said around the moves stands there ({@link
 *       plycrag.proof.replay.Customs}): percent signs, a number, words of modes, a place to park.
 *   <li>{@link plycrag.proof.replay.ProgramPlay} follows the tool. First Z alone to the safe
 *       height, and so after a change of tool; rapids across at clearance or above; rapids down no
 *       lower, but in a hole as far as it was drilled; cuts with the tool's speed, waited for, and
 *       its feeds, by drills straight down; nowhere outside of the travel, in a keep-out or below
 *       the floor; changes of tool and the end at the safe height with a standing spindle.
 *   <li>{@link plycrag.proof.replay.Boring} recognises holes in what was cut: plunged, or bored in
 *       rounds of arcs or short moves with a smaller cutter, measured at the ends of the moves.
 *   <li>{@link plycrag.proof.replay.MarkCheck}: letters are thin lines of a pointed tool within
 *       their box, to their depth, and fill it from the line to the height of capitals.
 *   <li>{@link plycrag.proof.replay.HoleCheck}: every hole once, its centre and its bottom within
 *       0.003 mm, its diameter within 0.01 mm.
 *   <li>{@link plycrag.proof.replay.ContourCheck}: what is cut otherwise belongs to a contour,
 *       leaves its piece whole within 0.01 mm and goes all round it, but for bridges that are
 *       foreseen, the sheet's edges and corners that the tool cannot reach. Cuts are ways of chords
 *       that stand off their arcs by 0.0005 mm at most; contours are sampled every millimetre.
 * </ol>
 *
 * <p>All faults are told, each with its program, its line and a sentence. Leaves out: whether a
 * feed or a depth of cut suits the wood, which way round a contour is cut, whether cutting a
 * contour frees a piece too early, what letters say, and moves that a controller makes of its own
 * accord. Sees {@code units} and {@code geometry}.
 */
package plycrag.proof.replay;
