package plycrag.layout.sheets;

import plycrag.layout.joints.Gusset;

/**
 * A gusset and where it is cut from.
 *
 * @param gusset what is needed
 * @param part of an offcut
 */
public record LaidGusset(Gusset gusset, OffcutPart part) {
  /** Where it is cut from, in words: {@code an offcut of S2}. */
  public String from() {
    return part.sheet().map(sheet -> "an offcut of " + sheet).orElse("a further sheet");
  }
}
