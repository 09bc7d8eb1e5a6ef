/**
 * Rules about how the wall stands, what is around it and who falls in front of it, one class each.
 *
 * <p>They judge places and lengths, and whether a wall on posts tips over; no strength. What of the
 * room is not told is not judged.
 */
package plycrag.check.standing;
