package plycrag.layout;

/**
 * An insert that was asked for and left out.
 *
 * @param insert what was asked for
 * @param obstacle the worst thing in its way
 */
public record Omission(Insert insert, Obstacle obstacle) {}
