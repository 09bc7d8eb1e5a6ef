/**
 * Turns a parameter file into validated records, or into findings that name file, line and column.
 *
 * <p>Every parameter is declared once: its key, its kind with the range or the words allowed, its
 * default in millimetre and in inch files, and a sentence that says what it is. One class for each
 * table of the file holds these declarations and makes that table's record of {@code wall}; {@link
 * plycrag.read.ParameterTable} lists them all. Reading, validation, {@link
 * plycrag.read.ReferencePage} and {@link plycrag.read.ParameterSchema} are driven by that list
 * alone.
 *
 * <p>{@link plycrag.read.ParameterFile} works in this order:
 *
 * <ol>
 *   <li>bytes to text: UTF-8, with or without a byte-order mark, any of the usual line ends;
 *   <li>text to TOML; a fault of syntax becomes a finding, its entry or header is remembered;
 *   <li>the unit of the file, since the meaning of bare numbers depends on it;
 *   <li>every entry by its kind; keys and tables that are not in the list;
 *   <li>what entries require of each other;
 *   <li>the records, if there was no finding. Screws and bolts that the file does not size are
 *       chosen then, by what they join ({@link plycrag.wall.ScrewReach}, {@code catalog}), since
 *       clearances follow from their diameter; where the catalogue has nothing that fits, a rule
 *       says what would do.
 * </ol>
 *
 * <p>Guarantees: one run reports all faults, sorted by place; no fault is reported twice or as the
 * consequence of another: an entry that could not be read is neither missing nor compared with
 * others. Nothing is clamped, rounded or guessed; what a file gives is never changed. No input
 * makes it throw.
 *
 * <p>Records hold lengths in millimetres, angles in degrees, feeds in mm/min. {@link
 * plycrag.read.Parameters}, all of them together, are seen by {@code read} and {@code app} alone;
 * {@link plycrag.read.WallMaker} makes the wall of them, without what is bought. Leaves out: files
 * that a file names ({@code read.lists}), and reading from a disk. Only {@code app} sees this room.
 */
package plycrag.read;
