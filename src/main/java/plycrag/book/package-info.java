/**
 * The build book: what a person reads, in the order of the work.
 *
 * <p>Needs a checked layout and what other rooms made of it: stock, lists, programs. Draws nothing,
 * but takes its figures from the portfolio by their kind, where the reader needs them ({@link
 * plycrag.book.Figures}) and, of kinds that no chapter needs, at the end; every page of the printed
 * set is in it, since it is carried where no screen is.
 *
 * <p>Guarantees: the cover names what was checked and what was not; the cautions stand with the
 * work that they belong to; a wall that must not be made is stamped. A line in a list and a figure
 * of a part lead to each other by the part's mark, and each mark has one such line. How inserts
 * came to their places is told as {@code layout.pattern} recorded it ({@link
 * plycrag.book.SettingOut}, which {@code explain} asks too).
 *
 * <p>Leaves out: how a page or a print looks. Sees {@code drawing} and all below.
 */
package plycrag.book;
