/**
 * Views of the wall in space: sections, plan, parts drawn apart, the wall on its support, and
 * details of what meets.
 *
 * <p>Needs a checked layout and, for what depends on an angle, its bodies in {@code
 * layout.standing}. As x runs to the climber's right and y toward the climber, y points down in a
 * plan, and a section with y to the right is seen from the climber's left.
 *
 * <ul>
 *   <li>{@link plycrag.drawing.room.SideView}, {@link plycrag.drawing.room.PlanView}: with heights
 *       above the floor, mats, the space to fall into and what stands around.
 *   <li>{@link plycrag.drawing.room.ExplodedView}, {@link plycrag.drawing.room.StandingView}:
 *       parallel views ({@link plycrag.drawing.room.Axonometry}) in which what others hide is left
 *       out ({@link plycrag.drawing.room.HiddenLines}) and every part has its mark ({@link
 *       plycrag.drawing.room.PartMarks}).
 *   <li>{@link plycrag.drawing.room.SupportSide}, {@link plycrag.drawing.room.SupportBack}: a
 *       support is set out from two square views, one of a station from the side, one from behind;
 *       marks of stations that look alike share a name in the first. What parallel views cannot
 *       show is dimensioned there.
 *   <li>{@link plycrag.drawing.room.FoldDetail}, {@link plycrag.drawing.room.CornerDetail}, {@link
 *       plycrag.drawing.room.GussetView}: how things meet, with the angles at which a saw is set.
 *   <li>{@link plycrag.drawing.room.WallModel}: no view but the wall itself, every part as a body
 *       or a place in the room, for other programs.
 * </ul>
 *
 * <p>Guarantees: bodies are those that rules judged. Leaves out: what lies in a facet's plane. Sees
 * {@code drawing.pen}.
 */
package plycrag.drawing.room;
