/**
 * How a key is declared, and how a table is read by its declarations; knows no wall.
 *
 * <p>Needs the tables of a TOML file and the place of each value ({@code read.text}).
 *
 * <ul>
 *   <li>{@link plycrag.read.schema.Kind}: what sort of value a key takes and which are allowed; it
 *       reads a value, or says what is wrong with it.
 *   <li>{@link plycrag.read.schema.Parameter}, {@link plycrag.read.schema.DefaultValue}, {@link
 *       plycrag.read.schema.TableSpec}: a key, what holds where it is left out, a table with what
 *       its values require of each other.
 *   <li>{@link plycrag.read.schema.Values}: what a file says in one table, defaults put in.
 *   <li>{@link plycrag.read.schema.Syntax}: what of a broken file could not be read, so that nobody
 *       reports the consequences; the rest is read all the same.
 *   <li>{@link plycrag.read.schema.ValueShape}: what of a kind others can tell, and how it is
 *       written as a JSON Schema.
 *   <li>{@link plycrag.read.schema.NearestKey}: what was probably meant.
 * </ul>
 *
 * <p>Guarantees: every refusal says what stands there, what is allowed in the file's unit and,
 * where one is near, the word that was meant; a length is a number of millimetres from here on. A
 * new kind is one class, permitted by {@link plycrag.read.schema.Kind}.
 *
 * <p>Leaves out: which keys there are. Sees {@code read.text} and the values of {@code wall}.
 */
package plycrag.read.schema;
