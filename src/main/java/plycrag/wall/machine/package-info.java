/**
 * The machine that makes the sheets: tools, speeds, travel, controller, and how sheets are cut and
 * marked.
 *
 * <p>Needs plain values of the file. A wall knows its machine, so that rules judge tools, speeds
 * and travel before approval; all that follows takes the machine from there and from nowhere else.
 *
 * <ul>
 *   <li>{@link plycrag.wall.machine.ToolBox} alone decides which tool makes a hole: the rule, the
 *       programs and the self-check ask it.
 *   <li>{@link plycrag.wall.machine.Controller} says what a controller understands, not how it is
 *       spelled.
 *   <li>A {@link plycrag.wall.machine.KeepOut} is told in places on the sheet as it lies and not on
 *       the machine: whoever sets up reads the same numbers as the drawing.
 *   <li>{@link plycrag.wall.machine.SheetCuttingRules} say how pieces may be laid, for saws and
 *       routers alike.
 * </ul>
 *
 * <p>Guarantees: lengths in mm, feeds in mm/min, speeds in turns a minute; what is not told and has
 * no default is empty, never a guess. Leaves out: moves, and whether a tool will do. Sees {@code
 * geometry} and below.
 */
package plycrag.wall.machine;
