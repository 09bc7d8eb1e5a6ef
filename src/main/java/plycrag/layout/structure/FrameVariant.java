package plycrag.layout.structure;

/**
 * One of the ways in which a wall is taken for a frame.
 *
 * @param jointsStiff whether joints pass all moments, or none that they need not
 * @param sheeted whether sheets resist racking
 */
public record FrameVariant(boolean jointsStiff, boolean sheeted) {
  /** In words. */
  public String words() {
    return (jointsStiff ? "joints stiff" : "joints pinned") + (sheeted ? "" : ", sheets left out");
  }
}
