package plycrag.proof.replay;

import java.util.List;

/**
 * A program as it will be written.
 *
 * @param name its file's name, for faults
 * @param text all of it
 * @param cutters in the order in which they are put in. The first is in the spindle at the start,
 *     or a pause before all cuts brings it; another pause brings the next, a change by word any
 */
public record Program(String name, String text, List<Cutter> cutters) {
  /**
   * Copies the cutters.
   *
   * @throws IllegalArgumentException without any
   */
  public Program {
    cutters = List.copyOf(cutters);
    if (cutters.isEmpty()) {
      throw new IllegalArgumentException("a program without a tool");
    }
  }
}
