/**
 * Reads programs back before they are released, plays them on a model of the sheet and holds what
 * they make against what is to be made.
 *
 * <p>Needs the text, as it will be on the disk; a {@link plycrag.machining.replay.Dialect}, what
 * the controller understands. Shares no code with the makers and writers of programs, so that no
 * mistake can be made twice the same way.
 *
 * <p>Modes, cycles, arcs and the order on a line follow NISTIR 6556 (the RS274/NGC interpreter),
 * read strictly: capitals, one meaning a line, nothing that the dialect does not state, every mode
 * stated before the first motion, a comment only at the end of its line.
 */
package plycrag.machining.replay;
