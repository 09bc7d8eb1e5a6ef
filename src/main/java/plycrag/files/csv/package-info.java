/**
 * Tables as comma-separated values.
 *
 * <p>Needs: a {@link plycrag.document.Table}.
 *
 * <p>Guarantees: the header first; one record a line, ended by a line feed; fields quoted as RFC
 * 4180 says, where they need it; numbers as {@link plycrag.units.Decimal} prints them; no field of
 * words that a spreadsheet would take for a formula. The last has a price: such words carry a
 * leading apostrophe, which a reader that is no spreadsheet sees.
 *
 * <p>Leaves out: what the columns are called and in which order they stand.
 */
package plycrag.files.csv;
