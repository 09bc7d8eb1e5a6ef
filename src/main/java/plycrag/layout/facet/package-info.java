/**
 * One facet with everything in its place, as a value: pieces, frame, joints, screws, inserts, what
 * was left out and why.
 *
 * <p>Needs what the rooms before it made; makes nothing itself. It stands alone so that what
 * follows (support, joints, sheets, rules and views) can ask for a facet without knowing how it
 * came about.
 *
 * <p>Guarantees: lists are copied and keep the order of reading. Keeps what hinders its inserts
 * ({@link plycrag.layout.pattern.InsertSurroundings}), so that rules ask the very question that the
 * set-out asked. Leaves out: where the facet stands in the room, which its {@link
 * plycrag.wall.Facet} tells, and all that concerns several facets.
 */
package plycrag.layout.facet;
