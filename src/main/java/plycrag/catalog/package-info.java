/**
 * What merchants sell, as read-only tables that come with the program.
 *
 * <p>Each table is a CSV file beside these classes, every row of it with the source of its numbers.
 * Brackets, straps and hinges, of which no open table tells what is sold, are sizes that the
 * shopping list asks for by what they must be; a user's own come before them ({@link
 * plycrag.catalog.SteelCatalog}). A size is given as sold; a length that a person tells is found
 * among them by {@link plycrag.catalog.SoldSize}.
 *
 * <p>Guarantees: rows keep the order of the file; lengths are millimetres. A table that cannot be
 * read is a defect of the program, never a fault of the user's. Leaves out: prices, and what is
 * available where. Sees {@code units} and {@code finding}.
 */
package plycrag.catalog;
