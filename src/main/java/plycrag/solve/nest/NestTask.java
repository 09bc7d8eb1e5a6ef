package plycrag.solve.nest;

import java.util.List;

/**
 * What is to be laid on what.
 *
 * @param blanks in the order of their marks
 * @param kinds the sheets there are; any number can be had of the first
 * @param gap between two blanks, mm: the saw's kerf, or the router's tool and what stays beside it
 * @param margin along the edge of every sheet that no blank may lie on, mm; a blank that needs the
 *     whole sheet lies there all the same
 * @param manner how blanks may lie
 */
public record NestTask(
    List<Blank> blanks, List<SheetKind> kinds, double gap, double margin, Manner manner) {

  /** Keeps copies. */
  public NestTask {
    blanks = List.copyOf(blanks);
    kinds = List.copyOf(kinds);
  }

  /**
   * How blanks may lie.
   *
   * @param mayTurn by 90°, since the grain may run either way
   * @param mirrored whether their backs lie up
   * @param lying how sheets lie
   */
  public record Manner(boolean mayTurn, boolean mirrored, Lying lying) {
    /** Sheets lie as their first blanks stand on the wall. */
    public Manner(boolean mayTurn, boolean mirrored) {
      this(mayTurn, mirrored, Lying.AS_BUILT);
    }
  }

  /** How sheets lie. */
  public enum Lying {
    /** So that their first blanks are turned as they stand on the wall. */
    AS_BUILT,
    /** All with their longer side along x. */
    LONG_ALONG_X,
    /** All with their longer side along y. */
    LONG_ALONG_Y
  }
}
