package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.layout.skin.Axis;
import plycrag.solve.setout.Conflict;
import plycrag.solve.setout.EvenGrid;
import plycrag.solve.setout.EvenGrids;
import plycrag.solve.setout.ForbiddenStretch;
import plycrag.solve.setout.Mode;
import plycrag.solve.setout.Result;
import plycrag.solve.setout.SetLine;
import plycrag.solve.setout.SetOut;
import plycrag.solve.setout.Task;
import plycrag.units.Tape;
import plycrag.wall.Inserts.WhenBlocked;
import plycrag.wall.Pattern;

/**
 * The columns or the rows of a facet set out against what lies across them.
 *
 * @param lines the way they run
 * @param task what was to be done
 * @param result what came of it
 * @param places where the lines are; of a line without a clear place, where it was asked for, mm
 * @param members where the movable members stood first, mm
 */
record AxisSetOut(Axis lines, Task task, Result result, List<Double> places, List<Double> members) {

  AxisSetOut {
    places = List.copyOf(places);
    members = List.copyOf(members);
  }

  static AxisSetOut of(AxisTask axis, List<Double> wanted, WhenBlocked whenBlocked, Tape tape) {
    Task task = axis.task(wanted, 0);
    Mode mode = mode(whenBlocked);
    Result least = best(axis, task, mode, tape);
    Result result = axis.besideMembers() > 0 ? roomy(axis, wanted, least, mode, tape) : least;
    double shift = mode == Mode.SHIFT && !axis.isMirrored() ? shift(result) : 0;
    List<Double> places =
        result.lines().stream()
            .map(line -> tape.snap(line.place().orElse(line.line().wanted() + shift)))
            .toList();
    return new AxisSetOut(axis.lines(), task, result, places, axis.movable());
  }

  private static Result best(AxisTask axis, Task task, Mode mode, Tape tape) {
    return axis.isMirrored()
        ? new MirroredSetOut(task, axis.extent(), tape).best(mode)
        : axis.isFromRight()
            ? new ImageSetOut(task, axis.extent(), tape).best(mode)
            : SetOut.of(task, mode);
  }

  /** With room beside the members, if that costs neither a line nor a move nor a member. */
  private static Result roomy(
      AxisTask axis, List<Double> wanted, Result least, Mode mode, Tape tape) {
    Result roomy = best(axis, axis.task(wanted, axis.besideMembers()), mode, tape);
    if (!roomy.isAsGoodAs(least)) {
      return least;
    }
    List<SetLine> lines = new ArrayList<>();
    for (int at = 0; at < roomy.lines().size(); at++) {
      SetLine line = roomy.lines().get(at);
      lines.add(new SetLine(line.line(), line.place(), least.lines().get(at).blockers()));
    }
    return new Result(lines, roomy.bays(), roomy.cost());
  }

  private static Mode mode(WhenBlocked whenBlocked) {
    return switch (whenBlocked) {
      case REPORT -> Mode.REPORT;
      case SHIFT -> Mode.SHIFT;
      case NUDGE -> Mode.NUDGE;
      case DROP -> Mode.DROP;
      case SOLVE -> Mode.SOLVE;
    };
  }

  /** By how much all lines moved together, mm. */
  private static double shift(Result result) {
    return result.lines().stream()
        .filter(line -> line.place().isPresent())
        .mapToDouble(line -> line.place().getAsDouble() - line.line().wanted())
        .findFirst()
        .orElse(0);
  }

  /** Where the movable members stand, ascending, mm. */
  List<Double> settled() {
    return task.bays().isEmpty() ? members : result.bays().stream().flatMap(List::stream).toList();
  }

  /** The lines without a clear place, by their indexes. */
  List<Integer> unclear() {
    List<Integer> unclear = new ArrayList<>();
    for (int line = 0; line < places.size(); line++) {
      if (result.lines().get(line).place().isEmpty()) {
        unclear.add(line);
      }
    }
    return unclear;
  }

  /** The same with a line elsewhere. */
  AxisSetOut with(int line, double place) {
    List<Double> moved = new ArrayList<>(places);
    moved.set(line, place);
    return new AxisSetOut(lines, task, result, moved, members);
  }

  /** What is to be told. */
  PatternOutcome.OfAxis told(Pattern pattern) {
    List<PatternOutcome.LineMove> moves = new ArrayList<>();
    for (int line = 0; line < places.size(); line++) {
      SetLine set = result.lines().get(line);
      double wanted = set.line().wanted();
      double place = places.get(line);
      if (place != wanted || !set.blockers().isEmpty()) {
        moves.add(
            new PatternOutcome.LineMove(
                line + 1,
                wanted,
                place,
                set.blockers().stream()
                    .map(one -> new PatternOutcome.InTheWay(one.name(), one.shortfall()))
                    .toList(),
                set.place().isPresent(),
                Conflict.of(task, result, line)));
      }
    }
    boolean isBlocked = result.lines().stream().anyMatch(line -> !line.blockers().isEmpty());
    return new PatternOutcome.OfAxis(
        lines,
        moves,
        places.size(),
        members,
        settled(),
        isBlocked && isEven(pattern) ? Optional.of(advice(pattern)) : Optional.empty());
  }

  /** What is to be told of the members alone. */
  PatternOutcome.OfAxis membersTold() {
    return new PatternOutcome.OfAxis(
        lines, List.of(), places.size(), members, settled(), Optional.empty());
  }

  private boolean isEven(Pattern pattern) {
    return pattern.kind() == Pattern.Kind.GRID && (lines == Axis.UP || !pattern.fades());
  }

  private PatternOutcome.Advice advice(Pattern pattern) {
    double pitch = lines == Axis.UP ? pattern.pitch().across() : pattern.pitch().up();
    double start = task.lines().get(0).wanted();
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (ForbiddenStretch keepout : task.keepouts()) {
      low = Double.isInfinite(keepout.low()) ? Math.max(low, keepout.high()) : low;
      high = Double.isInfinite(keepout.high()) ? Math.min(high, keepout.low()) : high;
    }
    EvenGrids grids = new EvenGrids(task, low, high);
    return new PatternOutcome.Advice(
        pitch,
        grids.conflict(pitch),
        grids
            .nearest(new EvenGrid(start, pitch))
            .map(even -> new PatternOutcome.Even(even.start(), even.pitch())));
  }
}
