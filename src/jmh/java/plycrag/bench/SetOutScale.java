package plycrag.bench;

import java.util.ArrayList;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plycrag.solve.setout.AskedLine;
import plycrag.solve.setout.Bay;
import plycrag.solve.setout.CrossingMember;
import plycrag.solve.setout.Limits;
import plycrag.solve.setout.Mode;
import plycrag.solve.setout.Result;
import plycrag.solve.setout.SetOut;
import plycrag.solve.setout.Task;

/**
 * So many columns along one wall, at a pitch that goes through every place beside the studs: fixed
 * ones every 1200 mm and two between that may move.
 */
@State(Scope.Benchmark)
public class SetOutScale {
  private static final double PITCH = 187;
  private static final double SHEET = 1200;
  private static final int WARM_SIZE = 1000;
  private static final int WARM_ROUNDS = 10;

  @Param({"1000", "3162", "10000", "31623", "100000"})
  int size;

  private Task task;

  /** Makes the wall, once small ones have warmed the machine up. */
  @Setup
  public void wall() {
    task = wall(WARM_SIZE);
    for (int round = 0; round < WARM_ROUNDS; round++) {
      solve();
      nudge();
    }
    task = wall(size);
  }

  private static Task wall(int size) {
    List<AskedLine> lines = new ArrayList<>();
    for (int line = 1; line <= size; line++) {
      lines.add(new AskedLine("column", line * PITCH));
    }
    List<CrossingMember> fixed = new ArrayList<>(List.of(stud(0)));
    List<Bay> bays = new ArrayList<>();
    for (int sheet = 0; sheet * SHEET < size * PITCH; sheet++) {
      double low = sheet * SHEET;
      bays.add(new Bay(sheet, 450, List.of(stud(low + 400), stud(low + 800))));
      fixed.add(stud(low + SHEET));
    }
    return new Task(lines, List.of(), fixed, bays, new Limits(1, 17.5, 30.5, 100));
  }

  private static CrossingMember stud(double centre) {
    return new CrossingMember("stud", centre, 22.5);
  }

  /** Columns alone. */
  @Benchmark
  public Result nudge() {
    return SetOut.of(task, Mode.NUDGE);
  }

  /** Columns and studs together. */
  @Benchmark
  public Result solve() {
    return SetOut.of(task, Mode.SOLVE);
  }
}
