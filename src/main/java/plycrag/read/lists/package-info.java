/**
 * Price lists, lists of positions and catalogues of steel: CSV files that a parameter file names.
 *
 * <p>Needs their bytes and what the parameter file that names them says of units and facets; {@code
 * app} finds and reads the files.
 *
 * <ol>
 *   <li>Rows with the places of their fields; lines that begin with {@code #} are remarks.
 *   <li>The first row names the columns, in any order; an unknown one is reported with the nearest
 *       word.
 *   <li>Each row by its columns: {@link plycrag.read.lists.PriceFile} makes offers, {@link
 *       plycrag.read.lists.PositionFile} places, {@link plycrag.read.lists.SteelFile} brackets,
 *       straps and hinges.
 * </ol>
 *
 * <p>Guarantees: all faults in one run, with line and column; a list is read whole or not at all,
 * and nothing is guessed, rounded or dropped silently. Leaves out: whether a place is clear, and
 * what things cost. Sees {@code read}, {@code prices} and the values of {@code wall}.
 */
package plycrag.read.lists;
