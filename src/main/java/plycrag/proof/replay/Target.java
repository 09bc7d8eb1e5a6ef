package plycrag.proof.replay;

/** Where a line sends the tool. */
final class Target {
  private Target() {}

  /** Axes that the line does not name stay. */
  static TipPlace of(Block block, Settings settings, TipPlace at) throws ReadingException {
    return new TipPlace(
        axis(block, 'X', settings, at.x()),
        axis(block, 'Y', settings, at.y()),
        axis(block, 'Z', settings, at.z()));
  }

  private static double axis(Block block, char letter, Settings settings, double at)
      throws ReadingException {
    if (!block.has(letter)) {
      return at;
    }
    double value = block.value(letter) * settings.scale();
    return settings.isIncremental() ? at + value : value;
  }
}
