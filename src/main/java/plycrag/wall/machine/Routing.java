package plycrag.wall.machine;

/**
 * How pieces and their openings are cut from a sheet.
 *
 * @param outlines whether they are, and what holds them meanwhile
 * @param direction how the cutter goes along what is kept
 * @param tabLength how long a tab is, mm
 * @param tabHeight how much of the sheet a tab leaves, mm
 * @param skin how much of the sheet stays all along where no tab holds it, mm
 * @param manner how the cutter goes down
 */
public record Routing(
    Outlines outlines,
    Direction direction,
    double tabLength,
    double tabHeight,
    double skin,
    Manner manner) {

  /**
   * How the cutter goes down.
   *
   * @param entry into a pass
   * @param tabRamp how far along the way it comes down after a tab, mm; 0 straight down
   */
  public record Manner(Entry entry, double tabRamp) {}

  /** How a cutter gets from one pass to the next on a closed way. */
  public enum Entry {
    /** On a short ramp, then once round at one height. */
    RAMP,
    /** All the way round, falling evenly, and once round at the bottom. */
    HELIX
  }

  /** Whether outlines are cut. */
  public enum Outlines {
    /** Only holes are made. */
    NONE,
    /** Through, but for a few bridges. */
    TABS,
    /** All along down to a thin skin. */
    SKIN
  }

  /** How the cutter goes along what is kept. */
  public enum Direction {
    /** With what is kept on its right, so that its edge cuts from thick to thin. */
    CLIMB,
    /** With what is kept on its left. */
    CONVENTIONAL
  }

  /** Whether outlines are cut. */
  public boolean cuts() {
    return outlines != Outlines.NONE;
  }

  /**
   * How far below the sheet's top the cutter goes, mm.
   *
   * @param thickness of the sheet, mm
   * @param breakthrough how far what goes through goes on below it, mm
   */
  public double depth(double thickness, double breakthrough) {
    return outlines == Outlines.SKIN ? thickness - skin : thickness + breakthrough;
  }
}
