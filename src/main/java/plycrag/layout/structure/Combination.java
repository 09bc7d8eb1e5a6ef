package plycrag.layout.structure;

/**
 * How loads add up, by EN 1990, (6.10) and Table A1.2 with the values recommended there, and by
 * (6.14) for use.
 */
public enum Combination {
  /** Most of all. */
  HEAVY("1.35 G + 1.5 Q", 1.35, 1.35, 1.5, true),
  /** As little of its own weight as there may be, and no holds. */
  LIGHT("1.0 G + 1.5 Q", 1, 0, 1.5, true),
  /** Its own weight alone. */
  PERMANENT("1.35 G", 1.35, 1.35, 0, false),
  /** In use, with climbers who hang still. */
  USE("G + Q", 1, 1, 1, false);

  private final String words;
  private final double weight;
  private final double holds;
  private final double climbers;
  private final boolean sudden;

  Combination(String words, double weight, double holds, double climbers, boolean sudden) {
    this.words = words;
    this.weight = weight;
    this.holds = holds;
    this.climbers = climbers;
    this.sudden = sudden;
  }

  /** In symbols. */
  public String words() {
    return words;
  }

  double weight() {
    return weight;
  }

  double holds() {
    return holds;
  }

  double climbers() {
    return climbers;
  }

  boolean isSudden() {
    return sudden;
  }

  /** Whether it asks for strength, not for use. */
  public boolean isUltimate() {
    return this != USE;
  }
}
