package plycrag.layout.joints;

import plycrag.geometry.Solid;

/**
 * Room that something takes.
 *
 * @param mark of it
 * @param body in the room; convex
 */
public record TakenRoom(String mark, Solid body) {}
