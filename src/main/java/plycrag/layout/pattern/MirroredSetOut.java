package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plycrag.geometry.Tolerance;
import plycrag.solve.setout.ForbiddenStretch;
import plycrag.solve.setout.Limits;
import plycrag.solve.setout.Mode;
import plycrag.solve.setout.Result;
import plycrag.solve.setout.SetLine;
import plycrag.solve.setout.SetOut;
import plycrag.solve.setout.Task;
import plycrag.units.Tape;

/**
 * Sets out columns that mirror each other about the middle of a facet's width: the left half
 * against what stands in the way of either half, and the right half as its image. Members stay
 * where they are, and so does a column in the middle.
 */
final class MirroredSetOut {
  private final Task task;
  private final double width;
  private final Tape tape;

  /**
   * @param task of all columns, which mirror each other as asked for
   * @param width of the facet, mm
   * @param tape what it is set out with
   */
  MirroredSetOut(Task task, double width, Tape tape) {
    this.task = task;
    this.width = width;
    this.tape = tape;
  }

  /** The best that a mode allows without moving members, or all columns by one amount. */
  Result best(Mode mode) {
    Result asked = SetOut.of(task, Mode.REPORT);
    if (mode == Mode.REPORT || asked.lines().isEmpty()) {
      return asked;
    }
    Mode kept = mode == Mode.NUDGE || mode == Mode.SOLVE ? Mode.NUDGE : Mode.DROP;
    Result half = SetOut.of(half(), kept);
    List<SetLine> lines = new ArrayList<>();
    for (int line = 0; line < asked.lines().size(); line++) {
      SetLine wanted = asked.lines().get(line);
      lines.add(new SetLine(wanted.line(), place(line, wanted, half), wanted.blockers()));
    }
    return new Result(lines, asked.bays(), half.cost());
  }

  private OptionalDouble place(int line, SetLine wanted, Result half) {
    int count = task.lines().size();
    int image = count - 1 - line;
    if (line == image) {
      return wanted.blockers().isEmpty()
          ? OptionalDouble.of(wanted.line().wanted())
          : OptionalDouble.empty();
    }
    if (line < image) {
      return half.lines().get(line).place();
    }
    OptionalDouble left = half.lines().get(image).place();
    return left.isPresent()
        ? OptionalDouble.of(tape.snap(width - left.getAsDouble()))
        : OptionalDouble.empty();
  }

  private Task half() {
    Limits limits = task.limits();
    boolean hasMiddle = task.lines().size() % 2 == 1;
    double toMiddle = hasMiddle ? limits.toLine() : limits.toLine() / 2;
    List<ForbiddenStretch> keepouts = new ArrayList<>(task.keepouts());
    keepouts.add(
        new ForbiddenStretch("the middle", width / 2 - toMiddle, Double.POSITIVE_INFINITY));
    task.keepouts().forEach(one -> keepouts.add(image(one)));
    task.membersAtFirst()
        .forEach(
            member -> {
              keepouts.add(member.keepout(limits.toMember()));
              keepouts.add(image(member.keepout(limits.toMember())));
            });
    return new Task(
        task.lines().subList(0, task.lines().size() / 2), keepouts, List.of(), List.of(), limits);
  }

  /** What keeps the image of a column off; a step more where images do not lie on the grid. */
  private ForbiddenStretch image(ForbiddenStretch keepout) {
    double rest = Tolerance.same(tape.snap(width), width) ? 0 : task.limits().step();
    return new ForbiddenStretch(
        keepout.name(), width - keepout.high() - rest, width - keepout.low() + rest);
  }
}
