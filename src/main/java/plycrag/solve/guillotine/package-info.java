/**
 * Rectangles cut from stock sheets by cuts that run right across what is being cut, as a track saw
 * makes them; any number of stages.
 *
 * <p>Needs: sizes in mm on the 1 µm grid, which is where they are rounded to; prices as whole
 * numbers of any one unit.
 *
 * <p>Guarantees: every item is laid once or named as left over; nothing overlaps; neighbouring
 * parts stand at least the kerf apart and all keep the trim margin; the cuts separate the items; no
 * kind is used beyond its limit. Same input, same result: all searches are seeded and bounded by
 * counted looks at places.
 *
 * <ol>
 *   <li>Every item and every sheet grows by one kerf, after which kerfs need no further thought
 *       ({@link plycrag.solve.guillotine.GuillotineTask}).
 *   <li>A lower bound on the number of sheets from dual feasible functions ({@link
 *       plycrag.solve.guillotine.SheetBound}).
 *   <li>First plans by inserting items in many orders into slicing trees. The trees hold sizes and
 *       no places, so that a cut is fixed only when all items are in ({@link
 *       plycrag.solve.guillotine.Insertion}).
 *   <li>For every cheaper choice of sheets, dearest first: ruin a few sheets and build them anew
 *       until nothing is left over ({@link plycrag.solve.guillotine.RuinAndRebuild}).
 *   <li>The same once more for the largest single offcut.
 * </ol>
 *
 * <p>Leaves out: outlines other than rectangles, a greatest number of stages, the order of sheets
 * on the machine. A plan that stands above the bound may still be the best; only the bound is
 * proved.
 */
package plycrag.solve.guillotine;
