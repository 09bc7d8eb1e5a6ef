/**
 * The build book: what a person reads, in the order of the work.
 *
 * <p>Needs a checked layout and what other rooms made of it; draws nothing, but takes its figures
 * from the one portfolio of views. Guarantees: the cover names what was checked and what was not;
 * the cautions stand with the work that they belong to; a wall that must not be made is stamped.
 */
package plycrag.book;
