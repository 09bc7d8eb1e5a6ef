package plycrag.solve.setout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class EvenGridsTest {
  private static final Limits LIMITS = new Limits(1, 38 / 2.0 + 4.5, 38 + 4.5, 0);

  private static Task sheet(double... studs) {
    List<CrossingMember> members =
        IntStream.range(0, studs.length)
            .mapToObj(at -> new CrossingMember("stud at " + studs[at], studs[at], 22.5))
            .toList();
    return new Task(List.of(), List.of(), members, List.of(), LIMITS);
  }

  /**
   * Common practice, no source; by hand: between the places around the studs at 400 and 800 lie 492
   * less a pitch to 308 and a pitch, of which one must be a multiple of the pitch. From 155 to 163
   * there is none; 164 twice is 328, from 354 to 682.
   */
  @Example
  void theNearestPitchThatClearsTheStuds() {
    EvenGrids grids = new EvenGrids(sheet(22.5, 400, 800, 1177.5), 50, 1150);
    assertThat(grids.nearest(new EvenGrid(50, 160))).hasValue(new EvenGrid(190, 164));
    assertThat(grids.conflict(160)).containsExactly("stud at 400.0", "stud at 800.0");
    assertThat(grids.conflict(164)).isEmpty();
  }

  @Example
  void aGridThatClearsStaysAsItIs() {
    EvenGrids grids = new EvenGrids(sheet(22.5, 400, 800, 1177.5), 50, 1150);
    assertThat(grids.nearest(new EvenGrid(100, 200)).orElseThrow().pitch()).isEqualTo(200);
    assertThat(grids.nearest(new EvenGrid(200, 164))).hasValue(new EvenGrid(190, 164));
  }

  @Example
  void whereNothingIsFreeThereIsNoGrid() {
    ForbiddenStretch all = new ForbiddenStretch("cutout", 0, 1200);
    Task task = new Task(List.of(), List.of(all), List.of(), List.of(), LIMITS);
    EvenGrids grids = new EvenGrids(task, 50, 1150);
    assertThat(grids.nearest(new EvenGrid(50, 160))).isEmpty();
    assertThat(grids.conflict(160)).containsExactly("cutout");
  }

  /** Against trying every start of every pitch, line by line. */
  @Property(tries = 200)
  void noNearerPitchClears(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 0, max = 600) Integer> studs,
      @ForAll @IntRange(min = 43, max = 250) int pitch) {
    double[] centres = studs.stream().mapToDouble(stud -> stud / 2.0 + 50).sorted().toArray();
    Task task = sheet(centres);
    EvenGrids grids = new EvenGrids(task, 20, 400);
    Optional<EvenGrid> found = grids.nearest(new EvenGrid(60, pitch));
    Optional<EvenGrid> first =
        IntStream.range(0, 400)
            .boxed()
            .flatMap(off -> Stream.of(pitch - off, pitch + off))
            .filter(one -> one >= LIMITS.toLine() && one <= 380)
            .flatMap(one -> startsNear(60, one).filter(start -> clears(task, start, one)))
            .findFirst();
    assertThat(found).isEqualTo(first);
    assertThat(grids.conflict(pitch).isEmpty())
        .isEqualTo(startsNear(60, pitch).anyMatch(start -> clears(task, start, pitch)));
  }

  private static Stream<EvenGrid> startsNear(int wanted, int pitch) {
    return IntStream.range(0, 1000)
        .boxed()
        .flatMap(off -> off == 0 ? Stream.of(wanted) : Stream.of(wanted - off, wanted + off))
        .filter(start -> start >= 20 && start < 20 + pitch)
        .map(start -> new EvenGrid(start, pitch));
  }

  private static boolean clears(Task task, EvenGrid grid, int pitch) {
    for (double place = grid.start(); place <= 400; place += pitch) {
      if (!ExhaustiveSetOut.clears(task, List.of(), place)) {
        return false;
      }
    }
    return true;
  }
}
