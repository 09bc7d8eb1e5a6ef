/**
 * Plans which pieces are cut from which lengths of stock, at the least cost.
 *
 * <p>Needs lengths as whole numbers of one unit, prices, and how many there are of each. Guarantees
 * that a plan holds every piece wanted and no other, with a kerf between pieces and none after the
 * last; that no plan costs less than the bound beside it; that the same task has the same plan on
 * every machine, since every search ends after a number of steps. How:
 *
 * <ol>
 *   <li>Kerfs are added to pieces and sticks and vanish; what lengths have in common is divided out
 *       ({@link plycrag.solve.cutting.PackingTask}).
 *   <li>Sticks are filled one after another with what is worth most for its weight ({@link
 *       plycrag.solve.cutting.Greedy}).
 *   <li>Where that is not proven to be best, column generation relaxes the task ({@link
 *       plycrag.solve.cutting.ColumnGeneration}); every bound is computed in whole numbers,
 *       whatever the linear program said ({@link plycrag.solve.cutting.DualBound}).
 *   <li>The relaxation is rounded by diving with limited discrepancies ({@link
 *       plycrag.solve.cutting.Dive}), and what is still open is searched completely as far as the
 *       steps reach ({@link plycrag.solve.cutting.Completion}). What that excludes raises the
 *       bound.
 * </ol>
 *
 * <p>Few patterns are sought among the plans of least cost and waste that come up, no more.
 *
 * <p>Leaves out: what a piece is for, and what length means.
 */
package plycrag.solve.cutting;
