/**
 * Where inserts are asked for, what they keep clear of, and what becomes of those that are blocked.
 *
 * <p>Needs the pieces and members of a facet, and the patterns of the facet and its zones. A
 * pattern lies on an area: the facet apart from its zones, or a zone ({@link
 * plycrag.layout.pattern.PatternArea}).
 *
 * <ol>
 *   <li>Columns and rows that the pattern asks for, on the marking grid ({@link
 *       plycrag.layout.pattern.InsertPattern}). Halves go to the nearer edge, so that left and
 *       right read the same from their own edges ({@link plycrag.layout.pattern.MarkingGrid}).
 *   <li>They are set out one axis at a time, a facet's own together with its free members ({@link
 *       plycrag.layout.pattern.AreaSetOut}, {@link plycrag.layout.pattern.AxisTask}); a zone's
 *       against what stands.
 *   <li>The exact set-out knows lines that run right across. One that something blocks in part is
 *       moved to where it keeps most inserts ({@link plycrag.layout.pattern.PartlyBlockedLines}).
 *   <li>Scattered inserts take what is clear of everything ({@link
 *       plycrag.layout.pattern.ScatterPattern}), listed ones the nearest clear place ({@link
 *       plycrag.layout.pattern.PlacedPattern}).
 *   <li>What is still blocked is left out or kept, as the file asks ({@link
 *       plycrag.layout.pattern.InsertSelection}).
 * </ol>
 *
 * <p>What moved and why is part of the result ({@link plycrag.layout.pattern.PatternOutcome}): the
 * book and {@code explain} tell the same. What an insert keeps clear of is said once, in {@link
 * plycrag.layout.pattern.InsertHindrances}: each {@link plycrag.layout.pattern.Hindrance} says
 * where it forbids inserts, and from that follow the set-out, the scatter, what is left out and the
 * rule, whose words stand with it; {@code check.clearance} makes them findings. Three things do not
 * follow from that alone:
 *
 * <ul>
 *   <li>Lines move as a whole, so a thing says whether it keeps off all of a line that it only
 *       meets in part ({@code Avoided.keepsOff}, seams in {@code ClearOfEdge}): a short header
 *       does, a neighbour's stud does where it lies behind half of the line. An area cannot tell
 *       that.
 *   <li>Members that the set-out moves are partners of its search and no stretches where no line
 *       may lie; it takes their distance from {@code ClearOfTimber}.
 *   <li>The distance between two inserts has no place until one of them has: which is in the way
 *       depends on which was chosen first. Each chooser keeps it by itself ({@link
 *       plycrag.layout.pattern.InsertSelection}, {@link plycrag.layout.pattern.AxisTask}, {@link
 *       plycrag.layout.pattern.PlacedPattern}), and {@code scatter-spacing} is the scatter's.
 * </ul>
 *
 * <p>Guarantees: inserts lie on the marking grid; order is that of reading. Leaves out: whether the
 * result is right. Sees {@code layout.skin}, {@code layout.frame}, and of the engines {@code
 * solve.setout} and {@code solve.scatter}.
 */
package plycrag.layout.pattern;
