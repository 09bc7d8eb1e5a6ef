package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;

/**
 * What a tool cuts between one way across and the next.
 *
 * @param program that asks for it
 * @param cutter the tool
 * @param cuts in order, one at least
 */
record Visit(String program, Cutter cutter, List<CutMove> cuts) {
  /** Copies the cuts. */
  Visit {
    cuts = List.copyOf(cuts);
  }

  /** Whether the tool only goes down and up. */
  boolean isPlunge() {
    return cuts.stream().allMatch(cut -> cut.isPlunge() && cut.from().isAbove(start()));
  }

  TipPlace start() {
    return cuts.get(0).from();
  }

  double lowest() {
    return cuts.stream().mapToDouble(CutMove::lowest).min().orElseThrow();
  }

  /** The cuts that lie at a height or below. */
  List<CutMove> below(double height) {
    return cuts.stream().filter(cut -> cut.highest() <= height).toList();
  }

  /** The cuts some part of which lies at a height or below. */
  List<CutMove> reaching(double height) {
    return cuts.stream().filter(cut -> cut.lowest() <= height).toList();
  }

  /** Whether the same program cuts with the same tool. */
  boolean isLike(Visit other) {
    return program.equals(other.program) && cutter.equals(other.cutter);
  }

  /** Both in one. */
  Visit with(Visit other) {
    List<CutMove> all = new ArrayList<>(cuts);
    all.addAll(other.cuts);
    return new Visit(program, cutter, all);
  }

  Fault fault(String sentence) {
    return new Fault(program, cuts.get(0).line(), sentence);
  }
}
