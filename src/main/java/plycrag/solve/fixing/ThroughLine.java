package plycrag.solve.fixing;

import plycrag.geometry.Vector3;

/**
 * Where something goes through two members.
 *
 * @param from where its head or its washer lies on the first one, in the room
 * @param way through both, of length one
 * @param grip the timber from there to where it comes out of the second, or a washer lies on that,
 *     mm
 */
public record ThroughLine(Vector3 from, Vector3 way, double grip) {}
