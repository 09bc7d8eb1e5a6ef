package plycrag.wall.machine;

import java.util.Optional;

/**
 * What larger controllers want said around a program's moves.
 *
 * @param percent whether a percent sign stands on the first line and on the last
 * @param number of the first program (O), from which the others count on; empty for none
 * @param safeStart whether everything that another program may have left in force is cancelled
 * @param workOffset in which X, Y and Z are zero
 * @param centres how the centres of arcs are told
 * @param beside what runs while the spindle turns
 * @param park where the spindle goes at the end; empty where it stays
 */
public record ProgramFrame(
    boolean percent,
    Optional<Integer> number,
    boolean safeStart,
    WorkOffset workOffset,
    ArcCentres centres,
    Beside beside,
    Optional<Park> park) {
  /** Nothing of all that. */
  public static final ProgramFrame NONE =
      new ProgramFrame(
          false,
          Optional.empty(),
          false,
          WorkOffset.G54,
          ArcCentres.UNSAID,
          Beside.NOTHING,
          Optional.empty());

  /** One of the places that a controller remembers as zero. */
  public enum WorkOffset {
    /** The first. */
    G54,
    /** The second. */
    G55,
    /** The third. */
    G56,
    /** The fourth. */
    G57,
    /** The fifth. */
    G58,
    /** The sixth. */
    G59
  }

  /** How the centres of arcs are told. */
  public enum ArcCentres {
    /** From where the arc begins, as every controller takes it of which nothing else is known. */
    UNSAID,
    /** From where the arc begins, and so it is said (G91.1). */
    FROM_START,
    /** From where X and Y are zero (G90.1). */
    FROM_ZERO
  }

  /** What runs while the spindle turns. */
  public enum Beside {
    /** Nothing. */
    NOTHING,
    /** What is wired to the word for mist. */
    M7,
    /** What is wired to the word for flood. */
    M8
  }

  /**
   * A place to leave the spindle at, from where X and Y are zero.
   *
   * @param x mm
   * @param y mm
   */
  public record Park(double x, double y) {}
}
