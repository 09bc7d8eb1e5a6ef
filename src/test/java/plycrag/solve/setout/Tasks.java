package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Small tasks on a coarse grid, in which much is in the way. */
final class Tasks {
  private Tasks() {}

  /** With one or two bays, some of them crowded. */
  static Arbitrary<Task> small() {
    return Combinators.combine(lines(), keepouts(), limits(), frame())
        .as((lines, keepouts, limits, frame) -> task(lines, keepouts, limits, frame));
  }

  /** The same with another tolerance, mm. */
  static Task within(double tolerance, Task task) {
    Limits limits = task.limits();
    return new Task(
        task.lines(),
        task.keepouts(),
        task.fixed(),
        task.bays(),
        new Limits(limits.step(), limits.toMember(), limits.toLine(), tolerance));
  }

  /** Where the fixed members stand, how broad all are, and how far apart the others may be. */
  private record Frame(List<Double> fixed, double half, double spacing) {}

  private static Arbitrary<Frame> frame() {
    Arbitrary<List<Double>> fixed =
        Combinators.combine(halves(0, 4), halves(9, 18), halves(20, 30), Arbitraries.of(2, 3, 3))
            .as((low, middle, high, count) -> fixed(low, middle, low + high, count));
    return Combinators.combine(fixed, Arbitraries.of(0.5, 1.0, 1.5), Arbitraries.of(7.5, 9.5, 12.0))
        .as(Frame::new);
  }

  private static List<Double> fixed(double low, double middle, double high, int count) {
    return count == 2
        ? List.of(low, middle)
        : List.of(low, Math.min(middle, high), Math.max(middle, high));
  }

  private static Arbitrary<Double> halves(int least, int most) {
    return Arbitraries.integers().between(2 * least, 2 * most).map(twice -> twice / 2.0);
  }

  private static Arbitrary<List<Integer>> lines() {
    return Arbitraries.integers().between(0, 28).list().ofMinSize(1).ofMaxSize(4);
  }

  private static Arbitrary<List<ForbiddenStretch>> keepouts() {
    Arbitrary<ForbiddenStretch> one =
        Combinators.combine(halves(0, 30), halves(0, 5))
            .as((low, extent) -> new ForbiddenStretch("edge", low, low + extent));
    return one.list().ofMaxSize(2);
  }

  private static Arbitrary<Limits> limits() {
    return Combinators.combine(
            Arbitraries.of(1.0, 1.5875),
            Arbitraries.of(0.5, 1.0, 2.25),
            Arbitraries.of(0.0, 2.0, 3.5, 6.0, 9.0),
            Arbitraries.of(0.0, 1.0, 2.0, 3.5, 5.0))
        .as((step, member, line, most) -> new Limits(step, member, line, most * step));
  }

  private static Task task(
      List<Integer> lines, List<ForbiddenStretch> keepouts, Limits limits, Frame frame) {
    List<Integer> sorted = lines.stream().sorted().toList();
    List<AskedLine> wanted =
        IntStream.range(0, sorted.size())
            .mapToObj(at -> new AskedLine("L" + at, sorted.get(at) * limits.step()))
            .toList();
    List<CrossingMember> fixed =
        IntStream.range(0, frame.fixed().size())
            .mapToObj(at -> new CrossingMember("F" + at, frame.fixed().get(at), frame.half()))
            .toList();
    List<Bay> bays = new ArrayList<>();
    for (int at = 0; at + 1 < fixed.size(); at++) {
      addBay(at, fixed, frame, limits, bays);
    }
    return new Task(wanted, keepouts, fixed, bays, limits);
  }

  /** Members as far up as the spacing allows, if that ends well. */
  private static void addBay(
      int after, List<CrossingMember> fixed, Frame frame, Limits limits, List<Bay> bays) {
    double end = fixed.get(after + 1).centre();
    List<CrossingMember> members = new ArrayList<>();
    double before = fixed.get(after).centre();
    while (end - before > frame.spacing()) {
      double most = Math.min(before + frame.spacing(), end - 2 * frame.half());
      double centre = Math.floor(most / limits.step() + 1e-9) * limits.step();
      if (centre - before < 2 * frame.half()) {
        return;
      }
      members.add(new CrossingMember("M" + after, centre, frame.half()));
      before = centre;
    }
    if (!members.isEmpty()) {
      bays.add(new Bay(after, frame.spacing(), members));
    }
  }
}
