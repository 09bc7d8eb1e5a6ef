/**
 * Source text and its places: bytes to text, values with line and column, rows of CSV, and findings
 * in a file.
 *
 * <p>Needs bytes, or values as a reader of TOML gives them; knows neither keys nor kinds.
 *
 * <p>Guarantees: text is UTF-8, or a finding says which bytes are not ({@link
 * plycrag.read.text.SourceText}); lines and columns count from 1, in characters as an editor counts
 * them ({@link plycrag.read.text.SourcePlace}); findings come out sorted by place ({@link
 * plycrag.read.text.Faults}); foreign text in a finding is masked. A value that is no TOML gets
 * friendly words ({@link plycrag.read.text.Explanation}).
 *
 * <p>Leaves out: what a value means. Sees {@code units} and {@code finding}.
 */
package plycrag.read.text;
