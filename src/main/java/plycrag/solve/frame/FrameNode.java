package plycrag.solve.frame;

import plycrag.geometry.Vector3;

/**
 * A place of the frame with six freedoms of its own.
 *
 * @param name what it is called, unlike any other of its frame
 * @param place where it is, mm
 */
public record FrameNode(String name, Vector3 place) {}
