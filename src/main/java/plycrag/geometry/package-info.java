/**
 * The only door to the construction of JTS geometries, and the only trigonometry.
 *
 * <p>Every coordinate made here lies on a grid of 1 µm, since a JTS factory with a precision model
 * does not round by itself. Lengths are millimetres, angles degrees. Transcendental functions are
 * those of {@link java.lang.StrictMath}, which gives the same bits on every machine.
 */
package plycrag.geometry;
