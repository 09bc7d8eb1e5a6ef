package plycrag.document;

/** The colours there are. Black does the work; colour only repeats what line and word say. */
public enum Ink {
  /** What the picture is about. */
  BLACK,
  /** Context. */
  GREY,
  /** What needs attention. */
  VERMILION
}
