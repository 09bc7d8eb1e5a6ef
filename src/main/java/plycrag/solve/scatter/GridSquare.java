package plycrag.solve.scatter;

/**
 * A square of places on the marking grid.
 *
 * @param column its leftmost places, in steps
 * @param row its lowest places, in steps
 * @param size places along a side, a power of two
 * @param region what of the area's boundary crosses it
 */
record GridSquare(int column, int row, int size, Region region) {}
