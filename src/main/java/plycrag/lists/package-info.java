/**
 * What can be told of a checked layout as rows or as a map: holes, screw points, findings, marking
 * out, geometries.
 *
 * <p>Needs a {@link plycrag.check.CheckedLayout}. What is bought and cut from sticks and sheets
 * stands in {@code stock} beside the reckoning that it comes from.
 *
 * <ul>
 *   <li>{@link plycrag.lists.HoleTable}: every machined hole, the table that all other files agree
 *       with.
 *   <li>{@link plycrag.lists.MarkingOut}: lines to strike and running readings from two datum
 *       edges, so that nobody adds in the head.
 *   <li>{@link plycrag.lists.LayoutMap}: facets and all on them as geometries in (u, v).
 *   <li>{@link plycrag.lists.FindingTable}, {@link plycrag.lists.ScrewPointTable}.
 * </ul>
 *
 * <p>Guarantees: each is a value of {@code document}, its columns named for machines with units at
 * the end; rows in the order of reading; columns are added and never renamed. Leaves out: formats.
 * Sees {@code check} and {@code document}.
 */
package plycrag.lists;
