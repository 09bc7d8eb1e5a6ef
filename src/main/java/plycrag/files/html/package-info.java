/**
 * The build book as one web page.
 *
 * <p>Needs: a {@link plycrag.document.Book}, and a function that gives a drawing as an inline
 * {@code svg} element whose width and height are its true size in millimetres.
 *
 * <p>Guarantees: one self-contained page that runs nothing and asks for nothing from anywhere, and
 * forbids both to the browser; well-formed as XML too; every text of the book is text in the page,
 * whatever it holds, and a character that no page may hold becomes U+FFFD. The page has one column;
 * what is wider than the window scrolls inside itself. On paper no figure is cut, stamp and footer
 * stand on every page, and a figure that is larger than the page is shrunk to it.
 *
 * <p>From a part's line in a list the page leads to the first figure of parts that shows its mark,
 * and back (PartLinks).
 *
 * <p>Leaves out: what a figure looks like, which the given function decides.
 */
package plycrag.files.html;
