package plycrag.proof.replay;

import java.util.List;

/**
 * A program as it will be written.
 *
 * @param name its file's name, for faults
 * @param text all of it
 * @param cutters in the order in which they are put in. The first is in the spindle at the start,
 *     or a pause before all cuts brings it; another pause brings the next, a change by word any
 * @param told what its comments say in order, in capitals; empty where nothing is held against them
 * @param customs what else is wanted of it
 */
public record Program(
    String name, String text, List<Cutter> cutters, List<String> told, Customs customs) {
  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException without any
   */
  public Program {
    cutters = List.copyOf(cutters);
    told = List.copyOf(told);
    if (cutters.isEmpty()) {
      throw new IllegalArgumentException("a program without a tool");
    }
  }

  /** A program whose comments may say anything. */
  public Program(String name, String text, List<Cutter> cutters) {
    this(name, text, cutters, List.of(), Customs.NONE);
  }
}
