package plycrag.solve.setout;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A line set out.
 *
 * @param line as asked for
 * @param place on the marking grid, mm; empty if dropped
 * @param blockers what stood in the way where it was asked for, with the members as they were laid
 *     out first
 */
public record SetLine(AskedLine line, OptionalDouble place, List<Blocker> blockers) {
  /** Copies the list. */
  public SetLine {
    blockers = List.copyOf(blockers);
  }
}
