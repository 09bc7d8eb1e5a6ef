/**
 * How the wall stands, what is around it and who falls in front of it, one class a rule.
 *
 * <p>Needs a layout and what the file tells of room, mats and support. Bodies, masses, raising and
 * falls are measured once in {@code layout.standing}, at every angle that the wall is used at.
 *
 * <p>Guarantees: rules judge places and lengths, and whether a wall on posts tips over ({@link
 * plycrag.check.standing.StandsFirm}, with its source); what of the room is not told is not judged,
 * and the book says so.
 *
 * <p>Leaves out: strength. Sees {@code check.rule} and the layout.
 */
package plycrag.check.standing;
