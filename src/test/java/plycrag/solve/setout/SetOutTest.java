package plycrag.solve.setout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;

class SetOutTest {
  private static final Offset<Double> EXACT = within(1e-6);

  @Provide
  Arbitrary<Task> tasks() {
    return Tasks.small();
  }

  @Property(tries = 200)
  void solvingCostsNoMoreThanAnything(@ForAll("tasks") Task task) {
    Cost found = SetOut.of(task, Mode.SOLVE).cost();
    assertThat(ExhaustiveSetOut.round(found)).isEqualTo(ExhaustiveSetOut.solve(task));
  }

  @Property(tries = 400)
  void nudgingCostsNoMoreThanAnythingWithTheseMembers(@ForAll("tasks") Task task) {
    Cost found = SetOut.of(task, Mode.NUDGE).cost();
    assertThat(ExhaustiveSetOut.round(found)).isEqualTo(ExhaustiveSetOut.nudge(task));
  }

  @Property(tries = 400)
  void shiftingKeepsAsManyAsAnyAmount(@ForAll("tasks") Task task) {
    Cost found = ExhaustiveSetOut.round(SetOut.of(task, Mode.SHIFT).cost());
    assertThat(found).isEqualTo(ExhaustiveSetOut.shift(task));
  }

  @Property(tries = 300)
  void droppingIsNudgingByNothing(@ForAll("tasks") Task task) {
    Cost found = SetOut.of(task, Mode.DROP).cost();
    assertThat(found).isEqualTo(ExhaustiveSetOut.nudge(Tasks.within(0, task)));
  }

  @Property(tries = 300)
  void solvingIsNeverWorse(@ForAll("tasks") Task task) {
    Cost solved = SetOut.of(task, Mode.SOLVE).cost();
    for (Mode mode : List.of(Mode.SHIFT, Mode.NUDGE, Mode.DROP)) {
      assertThat(solved).isLessThanOrEqualTo(SetOut.of(task, mode).cost());
    }
  }

  @Property(tries = 300)
  void nothingKeptIsBlockedOrTooFarOrOffTheGrid(@ForAll("tasks") Task task) {
    for (Mode mode : List.of(Mode.SHIFT, Mode.NUDGE, Mode.DROP, Mode.SOLVE)) {
      Result result = SetOut.of(task, mode);
      List<Double> places = new ArrayList<>();
      for (SetLine line : result.lines()) {
        line.place().ifPresent(places::add);
        line.place().ifPresent(place -> assertThat(onGrid(place, task)).isCloseTo(place, EXACT));
        assertThat(Math.abs(line.place().orElse(line.line().wanted()) - line.line().wanted()))
            .isLessThanOrEqualTo(task.limits().tolerance() + 1e-6);
      }
      assertThat(places).allMatch(place -> ExhaustiveSetOut.clears(task, result.bays(), place));
      for (int at = 1; at < places.size(); at++) {
        assertThat(places.get(at) - places.get(at - 1))
            .isGreaterThanOrEqualTo(task.limits().toLine() - 1e-6);
      }
    }
  }

  private static double onGrid(double place, Task task) {
    return Math.rint(place / task.limits().step()) * task.limits().step();
  }

  @Property(tries = 300)
  void solvedMembersKeepTheirSpacing(@ForAll("tasks") Task task) {
    Result result = SetOut.of(task, Mode.SOLVE);
    for (int at = 0; at < task.bays().size(); at++) {
      Bay bay = task.bays().get(at);
      List<Double> all = new ArrayList<>();
      all.add(task.fixed().get(bay.after()).centre());
      all.addAll(result.bays().get(at));
      all.add(task.fixed().get(bay.after() + 1).centre());
      for (int next = 1; next < all.size(); next++) {
        double apart = all.get(next) - all.get(next - 1);
        assertThat(apart).isLessThanOrEqualTo(bay.greatestSpacing() + 1e-6);
      }
    }
  }

  @Property(tries = 200)
  void membersInNobodysWayStay(@ForAll("tasks") Task task) {
    Result result = SetOut.of(task, Mode.SOLVE);
    List<List<Double>> first = membersAtFirst(task);
    boolean isClear =
        result.lines().stream()
            .flatMap(line -> line.place().stream().boxed())
            .allMatch(place -> ExhaustiveSetOut.clears(task, first, place));
    if (isClear && result.cost().members() == first.stream().mapToInt(List::size).sum()) {
      assertThat(result.bays()).isEqualTo(first);
    }
  }

  @Property(tries = 100)
  void theSameTaskGivesTheSameResult(@ForAll("tasks") Task task) {
    for (Mode mode : Mode.values()) {
      assertThat(SetOut.of(task, mode)).isEqualTo(SetOut.of(task, mode));
    }
  }

  @Property(tries = 200)
  void reportingMovesNothingAndNamesWhatBlocks(@ForAll("tasks") Task task) {
    List<List<Double>> bays = membersAtFirst(task);
    for (SetLine line : SetOut.of(task, Mode.REPORT).lines()) {
      double place = line.place().orElseThrow();
      assertThat(place).isCloseTo(line.line().wanted(), EXACT);
      boolean isNamed =
          line.blockers().stream().anyMatch(blocker -> !blocker.name().startsWith("L"));
      assertThat(isNamed).isNotEqualTo(ExhaustiveSetOut.clears(task, bays, place));
    }
  }

  private static List<List<Double>> membersAtFirst(Task task) {
    return task.bays().stream()
        .map(bay -> bay.members().stream().map(CrossingMember::centre).toList())
        .toList();
  }

  @Property(tries = 300)
  void whatDropsALineCoversItsTolerance(@ForAll("tasks") Task task) {
    Result result = SetOut.of(task, Mode.NUDGE);
    for (int line = 0; line < result.lines().size(); line++) {
      boolean isDropped = result.lines().get(line).place().isEmpty();
      assertThat(Conflict.of(task, result, line).isEmpty()).isNotEqualTo(isDropped);
    }
  }

  /** The sheet of the examples: 1200 wide, studs of 45 at its edges and at 600. */
  private static Task sheet(List<Bay> bays, List<CrossingMember> fixed, double... wanted) {
    List<AskedLine> lines =
        IntStream.range(0, wanted.length)
            .mapToObj(at -> new AskedLine("column " + (at + 1), wanted[at]))
            .toList();
    List<ForbiddenStretch> edges =
        List.of(
            new ForbiddenStretch("left edge", Double.NEGATIVE_INFINITY, 50),
            new ForbiddenStretch("right edge", 1150, Double.POSITIVE_INFINITY));
    return new Task(lines, edges, fixed, bays, new Limits(1, 26 / 2.0 + 4.5, 26 + 4.5, 100));
  }

  private static CrossingMember stud(double centre) {
    return new CrossingMember("stud at " + centre, centre, 22.5);
  }

  private static List<Double> places(Result result) {
    return result.lines().stream().map(line -> line.place().orElseThrow()).toList();
  }

  /** Common practice, no source: an even pitch of 250 meets the stud in the middle. */
  @Example
  void nudgingMovesTheColumnOnTheStudAndNoOther() {
    List<CrossingMember> studs = List.of(stud(22.5), stud(600), stud(1177.5));
    Result result = SetOut.of(sheet(List.of(), studs, 100, 350, 600, 850, 1100), Mode.NUDGE);
    assertThat(places(result)).containsExactly(100.0, 350.0, 560.0, 850.0, 1100.0);
    assertThat(result.cost()).isEqualTo(new Cost(0, 40, 0, 40, -40));
    assertThat(result.lines().get(2).blockers()).containsExactly(new Blocker("stud at 600.0", 40));
  }

  /** The same with a stud that may move: no column has to, for one stud more if need be. */
  @Example
  void solvingMovesTheStudInstead() {
    List<CrossingMember> studs = List.of(stud(22.5), stud(1177.5));
    Bay narrow = new Bay(0, 600, List.of(stud(600)));
    Result divided = SetOut.of(sheet(List.of(narrow), studs, 100, 350, 600, 850, 1100), Mode.SOLVE);
    assertThat(divided.cost()).isEqualTo(new Cost(0, 0, 2, 0, 0));
    Bay wide = new Bay(0, 640, List.of(stud(600)));
    Result freed = SetOut.of(sheet(List.of(wide), studs, 100, 350, 600, 850, 1100), Mode.SOLVE);
    assertThat(freed.cost()).isEqualTo(new Cost(0, 0, 1, 0, 0));
    assertThat(freed.bays()).containsExactly(List.of(560.0));
  }

  /**
   * Common practice, no source: 2355 - 13 - 4.5 = 2337.5, and half a millimetre to the safe side.
   */
  @Example
  void aRowUnderThePlateIsRoundedAwayFromIt() {
    CrossingMember plate = new CrossingMember("plate", 2400 - 22.5, 22.5);
    Task task =
        new Task(
            List.of(new AskedLine("row", 2350)),
            List.of(),
            List.of(plate),
            List.of(),
            new Limits(1, 17.5, 30, 100));
    assertThat(places(SetOut.of(task, Mode.NUDGE))).containsExactly(2337.0);
  }

  /** A second stud is worth a column: one alone can stand at 500 only, where the column is. */
  @Example
  void oneMoreStudIsAddedOnlyToSaveAColumn() {
    List<CrossingMember> ends = List.of(stud(0), stud(1000));
    Bay bay = new Bay(0, 500, List.of(stud(500)));
    Task tight = Tasks.within(10, sheet(List.of(bay), ends, 500));
    assertThat(SetOut.of(tight, Mode.NUDGE).cost().dropped()).isEqualTo(1);
    Result solved = SetOut.of(tight, Mode.SOLVE);
    assertThat(solved.cost()).isEqualTo(new Cost(0, 0, 2, 0, 0));
    assertThat(solved.bays()).containsExactly(List.of(333.0, 667.0));
    Task loose = sheet(List.of(bay), ends, 300);
    assertThat(SetOut.of(loose, Mode.SOLVE).bays()).containsExactly(List.of(500.0));
  }

  @Example
  void shiftingMovesAllByOneAmount() {
    List<CrossingMember> studs = List.of(stud(22.5), stud(600), stud(1177.5));
    Result result = SetOut.of(sheet(List.of(), studs, 130, 380, 630, 880), Mode.SHIFT);
    assertThat(places(result)).containsExactly(140.0, 390.0, 640.0, 890.0);
    assertThat(result.cost()).isEqualTo(new Cost(0, 10, 0, 40, 40));
  }

  @Example
  void ofTwoLinesTooNearEachOtherTheUpperIsDropped() {
    Result result = SetOut.of(sheet(List.of(), List.of(), 300, 320), Mode.DROP);
    assertThat(result.lines().get(0).place()).isEqualTo(OptionalDouble.of(300));
    assertThat(result.lines().get(1).place()).isEmpty();
    assertThat(result.lines().get(1).blockers()).containsExactly(new Blocker("column 1", 10.5));
  }

  @Example
  void whatConflictsIsNamedWithoutWhatDoesNotMatter() {
    List<CrossingMember> studs = List.of(stud(22.5), stud(565), stud(635), stud(1177.5));
    Task task = Tasks.within(50, sheet(List.of(), studs, 350, 600));
    Result result = SetOut.of(task, Mode.NUDGE);
    assertThat(Conflict.of(task, result, 1)).containsExactly("stud at 565.0", "stud at 635.0");
    assertThat(Conflict.of(task, result, 0)).isEmpty();
  }

  /** Sixteenths of an inch: 24 in less 5/8 + 3/4 + 3/16 are 22-7/16 in. */
  @Example
  void inchesLandOnSixteenths() {
    double inch = 25.4;
    Task task =
        new Task(
            List.of(new AskedLine("column", 24 * inch)),
            List.of(),
            List.of(new CrossingMember("stud", 24 * inch, 0.75 * inch)),
            List.of(),
            new Limits(inch / 16, (0.625 + 0.1875) * inch, inch, 4 * inch));
    assertThat(places(SetOut.of(task, Mode.NUDGE)).get(0)).isCloseTo(22.4375 * inch, EXACT);
  }

  @Example
  void aBayThatBreaksItsSpacingIsRefused() {
    Bay bay = new Bay(0, 400, List.of(stud(600)));
    Task task = sheet(List.of(bay), List.of(stud(22.5), stud(1177.5)), 100);
    assertThatThrownBy(() -> SetOut.of(task, Mode.SOLVE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("stud at 600");
  }

  @Example
  void linesOutOfOrderAreRefused() {
    assertThatThrownBy(() -> sheet(List.of(), List.of(), 300, 200))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
