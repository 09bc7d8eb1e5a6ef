/**
 * What a merchant asks: articles, offers and price lists, as values.
 *
 * <p>Needs nothing but numbers; {@code read.lists} makes them from a file.
 *
 * <p>Articles have a few fixed words, and sizes are lengths, not a merchant's texts ({@link
 * plycrag.prices.Article}): so what fits can be told for certain, and a list may write a size in
 * any unit. A size as stated and a size as sold are the same within what shops tell apart ({@code
 * catalog.SoldSize}).
 *
 * <p>Guarantees: money is decimal; a price that is left open is empty, never zero; offers keep the
 * order of the list; an offer of the very size goes before one that names none ({@link
 * plycrag.prices.PriceList}).
 *
 * <p>Leaves out: how much is wanted and what it comes to, which is the business of {@code stock}. A
 * price list only prices: nothing in {@code wall} or {@code layout} asks it, so that no price can
 * move a hole. Sees {@code units} and {@code catalog}.
 */
package plycrag.prices;
