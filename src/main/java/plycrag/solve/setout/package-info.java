/**
 * The exact set-out of columns or rows against the members and edges that lie across them, one axis
 * at a time; knows lengths only.
 *
 * <p>Needs: lines, keep-outs and members in mm along the axis; members of a bay on the marking grid
 * and within its greatest spacing.
 *
 * <p>Guarantees: every place is a step of the marking grid. Except in {@link
 * plycrag.solve.setout.Mode#REPORT}, no line that is kept lies in a keep-out, too near a member or
 * too near another line, and none moves further than the tolerance; the spacing of the bays holds.
 * Each mode gives the least {@link plycrag.solve.setout.Cost} of all that it allows, on all its
 * levels: lines dropped, largest move, members, sum of moves, lower places. So {@code SOLVE} is
 * never worse than {@code NUDGE} or {@code SHIFT}. Same input, same result.
 *
 * <ol>
 *   <li>All lengths are counted in steps, rounded to the safe side ({@link
 *       plycrag.solve.setout.SteppedTask}).
 *   <li>Fixed members that no line can pass or reach across divide the axis into stretches. One in
 *       which nothing is in the way is left as it is.
 *   <li>In every other stretch, from its upper end down: the least cost above each place of a
 *       member for each line that may come next ({@link plycrag.solve.setout.Sweep}), over the runs
 *       of lines between two members, each line at every place within the bound ({@link
 *       plycrag.solve.setout.LineRun}). First lines dropped and the largest move are weighed; then,
 *       with that move as the bound, members and moves.
 *   <li>Members settle between the lines, in that number, with the least moves of their own ({@link
 *       plycrag.solve.setout.EvenedGaps}).
 * </ol>
 *
 * <p>Lines keep their order; two that change places never move less. Cost: with {@code t} steps of
 * tolerance and {@code s} of greatest spacing, {@code n} lines take {@code n t} in {@code NUDGE}
 * and {@code SHIFT}, {@code n s (t + s)} at most in {@code SOLVE}.
 *
 * <p>Leaves out: single inserts that need not keep to their line, members that cross only a part of
 * the axis' breadth, the price of moving members.
 */
package plycrag.solve.setout;
