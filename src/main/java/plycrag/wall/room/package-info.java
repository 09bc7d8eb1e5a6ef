/**
 * What is around the wall and what holds it up, as the file tells it.
 *
 * <p>Needs plain values: sides, ceiling and ways of the room, obstacles, mats and who lifts ({@link
 * plycrag.wall.room.Room}); how the wall is supported, all of it or facet by facet ({@link
 * plycrag.wall.room.Supports}).
 *
 * <p>Guarantees: what is not told is empty, and is not judged. Heights are above the floor, mm;
 * where that falls, above the highest place of it under the wall. Whatever ends the room above or
 * below is a plane of one kind ({@link plycrag.wall.room.RoomPlane}).
 *
 * <p>Leaves out: where any timber of a support stands ({@code layout.support}), and whether the
 * wall fits ({@code check.standing}). Sees {@code wall.buying} for sections of timber, and {@code
 * geometry} and below.
 */
package plycrag.wall.room;
