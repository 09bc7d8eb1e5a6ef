package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Sets out the lines of one axis against what lies across it. The package's page tells how. */
public final class SetOut {
  private final Task task;
  private final SteppedTask ground;

  private SetOut(Task task) {
    this.task = task;
    this.ground = new SteppedTask(task);
  }

  /**
   * The best set-out that a mode allows.
   *
   * @throws IllegalArgumentException if a bay's members, as laid out first, break its spacing
   * @throws ArithmeticException if some ten thousand lines lie in one stretch that no fixed member
   *     divides
   */
  public static Result of(Task task, Mode mode) {
    return new SetOut(task).result(mode);
  }

  private Result result(Mode mode) {
    int tolerance = ground.steps.down(task.limits().tolerance());
    return switch (mode) {
      case REPORT ->
          withMembersAtFirst(Arrays.stream(ground.wanted).boxed().toArray(Integer[]::new));
      case SHIFT -> withMembersAtFirst(new Shift(ground).best(tolerance));
      case DROP -> withMembersAtFirst(new Shift(ground).best(0));
      case NUDGE -> withMembersAtFirst(nudged(tolerance));
      case SOLVE -> solved(tolerance);
    };
  }

  private Integer[] nudged(int tolerance) {
    Solver solver = new Solver(task.withMembersFixed());
    return solver.best(Toll.Worst.move(solver.worst(tolerance))).places();
  }

  /** What nudging achieves bounds the largest move, if it keeps all lines. */
  private Result solved(int tolerance) {
    long nudged = new Solver(task.withMembersFixed()).worst(tolerance);
    int bound = Toll.Worst.dropped(nudged) == 0 ? Toll.Worst.move(nudged) : tolerance;
    Solver solver = new Solver(task);
    Solver.Plan plan = solver.best(Toll.Worst.move(solver.worst(bound)));
    List<List<Double>> bays = new ArrayList<>();
    for (Bay bay : task.bays()) {
      bays.add(plan.members().get(bay.after() + 1).stream().map(ground.steps::length).toList());
    }
    return result(plan.places(), bays);
  }

  private Result withMembersAtFirst(Integer... places) {
    List<List<Double>> bays =
        task.bays().stream()
            .map(bay -> bay.members().stream().map(CrossingMember::centre).toList())
            .toList();
    return result(places, bays);
  }

  private Result result(Integer[] places, List<List<Double>> bays) {
    BlockerSearch hindrances = new BlockerSearch(task);
    List<SetLine> lines = new ArrayList<>();
    for (int line = 0; line < places.length; line++) {
      OptionalDouble place =
          places[line] == null
              ? OptionalDouble.empty()
              : OptionalDouble.of(ground.steps.length(places[line]));
      lines.add(new SetLine(task.lines().get(line), place, hindrances.of(line)));
    }
    return new Result(lines, bays, cost(places, bays));
  }

  private Cost cost(Integer[] places, List<List<Double>> bays) {
    int dropped = 0;
    int largest = 0;
    long moves = 0;
    long lean = 0;
    for (int line = 0; line < places.length; line++) {
      if (places[line] == null) {
        dropped++;
      } else {
        int move = places[line] - ground.wanted[line];
        largest = Math.max(largest, Math.abs(move));
        moves += Math.abs(move);
        lean += move;
      }
    }
    double step = ground.steps.step();
    int members = bays.stream().mapToInt(List::size).sum();
    return new Cost(dropped, largest * step, members, moves * step, lean * step);
  }
}
