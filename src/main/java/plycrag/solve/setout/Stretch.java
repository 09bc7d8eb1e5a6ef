package plycrag.solve.setout;

/**
 * A part of the axis that can be set out on its own.
 *
 * @param from the fixed place where it begins
 * @param to the fixed place where it ends
 * @param firstLine the first line in it
 * @param endLine the line after its last
 */
record Stretch(int from, int to, int firstLine, int endLine) {}
