package plycrag.layout.joints;

import plycrag.geometry.Solid;

/**
 * Room that something takes.
 *
 * @param mark of it
 * @param body in the room; convex
 */
public record MarkedBody(String mark, Solid body) {}
