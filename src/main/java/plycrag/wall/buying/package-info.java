/**
 * What the file says of buying: the timber that is sold or at hand, and the materials that are
 * wished for.
 *
 * <p>Needs plain values. {@link plycrag.wall.buying.TimberStock} is part of the wall, since lengths
 * decide where members are spliced. {@link plycrag.wall.buying.MaterialWishes} is not: it goes to
 * {@code stock} beside the checked layout, together with the price list that it names. A timber's
 * {@link plycrag.wall.buying.Section} stands here, because frames, supports and obstacles are told
 * in what merchants sell.
 *
 * <p>Guarantees: what follows from where the wall stands (service class, glue bond, treatment) is a
 * default of words ({@link plycrag.wall.buying.ServiceClass}); what a file gives is never changed.
 *
 * <p>Leaves out: prices, and how much of anything. Sees {@code geometry} and below.
 */
package plycrag.wall.buying;
