/**
 * What is to be built: the facets, their size and attitude, and what they are made of.
 *
 * <p>Needs validated parameters. Guarantees: every facet has an outline in its own (u, v), u to the
 * right as seen from the front, v up the slope, its lowest and its leftmost place at 0; walls that
 * meet in a corner are cut off in the line where their planes meet. Leaves out: any place of a
 * piece, member or hole, which is the business of {@code layout}.
 */
package plycrag.wall;
