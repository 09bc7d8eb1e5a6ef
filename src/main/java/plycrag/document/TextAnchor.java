package plycrag.document;

/** Which point of a text stands at its place, along the text's line. */
public enum TextAnchor {
  /** Its start. */
  START,
  /** Its middle. */
  MIDDLE,
  /** Its end. */
  END
}
