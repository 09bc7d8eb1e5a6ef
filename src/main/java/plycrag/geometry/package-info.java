/**
 * The only door to the construction of JTS geometries, and the only trigonometry.
 *
 * <p>Every coordinate made here lies on a grid of 1 µm, since a JTS factory with a precision model
 * does not round by itself. Lengths are millimetres, angles degrees. Transcendental functions are
 * those of {@link java.lang.StrictMath}, which gives the same bits on every machine.
 *
 * <p>What counts as nothing is said in {@link plycrag.geometry.Tolerance} alone: every comparison
 * of lengths, places, ways and angles names a quantity or a predicate of it, and no class has an
 * epsilon of its own. Lengths of the trade are no tolerances and stay where they are asked for; how
 * true a program of a machine has to be is said by the check that reads it back.
 */
package plycrag.geometry;
