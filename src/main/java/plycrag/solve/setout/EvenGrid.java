package plycrag.solve.setout;

/**
 * Lines at one distance from each other, from a first one on as far as there is room.
 *
 * @param start the first line, mm
 * @param pitch between neighbours, mm
 */
public record EvenGrid(double start, double pitch) {}
