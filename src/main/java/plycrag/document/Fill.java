package plycrag.document;

/** What an area is filled with. */
public enum Fill {
  /** Nothing; what lies below shows. */
  NONE,
  /** White, so that what lies below is covered. */
  PAPER,
  /** The pale tint of the timber that the picture is about. */
  TIMBER,
  /** A pale tint of what is added in a step. */
  ADDED,
  /** The same, of a side in the shade. */
  ADDED_SHADE,
  /** The layer's ink. */
  INK
}
