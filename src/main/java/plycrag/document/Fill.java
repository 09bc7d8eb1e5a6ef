package plycrag.document;

/** What an area is filled with. */
public enum Fill {
  /** Nothing; what lies below shows. */
  NONE,
  /** White, so that what lies below is covered. */
  PAPER,
  /** The pale tint of the timber that the picture is about. */
  TIMBER,
  /** The layer's ink. */
  INK
}
