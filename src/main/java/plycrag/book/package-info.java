/**
 * The build book: what a person reads, in the order of the work.
 *
 * <p>Needs a checked layout and what other rooms made of it: stock, lists, programs. Begins with
 * the wall as a person sees it and its figures, then what to buy and to cut, then the steps of
 * {@link plycrag.layout.standing.BuildOrder} with a picture each ({@link plycrag.book.StepPages}),
 * then what is looked up while they are done, and last what was checked. Takes its figures from the
 * portfolio by their kind ({@link plycrag.book.Figures}); what steps show one by one, and gussets,
 * are in the printed set alone.
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
