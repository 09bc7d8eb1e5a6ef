package plycrag.solve.fixing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.units.Tape;

/**
 * Two screws through one member into the end of another. They keep it in its place; across the
 * grain of an end a screw bears little, and along it nothing is counted on (EN 1995-1-1, 8.3.1.2
 * and 8.7.2, from memory).
 */
public final class EndScrews {
  /**
   * From an end of what they go through, predrilled (common practice, no source), in diameters:
   * what only keeps another in its place does not split it.
   */
  private static final double FROM_END = 5;

  private static final double OPPOSITE = -0.999;
  private static final double TOUCH = 0.5;

  private final double diameter;
  private final double reached;
  private final Tape tape;

  /**
   * @param diameter of the screws, mm; the timber is predrilled for them
   * @param reached how deep the screws of the sheets end behind these, mm
   * @param tape on whose marking grid they are set
   */
  public EndScrews(double diameter, double reached, Tape tape) {
    this.diameter = diameter;
    this.reached = reached;
    this.tape = tape;
  }

  /**
   * The screws; empty where the two do not meet so, or where they find no room.
   *
   * @param through which they go
   * @param into whose end
   * @param isFree whether nothing else is where one would be
   */
  public Optional<LapScrews> of(
      TimberBody through, TimberBody into, Predicate<ThroughLine> isFree) {
    return through.sides().stream()
        .flatMap(side -> into.ends().stream().flatMap(end -> lap(through, side, end).stream()))
        .flatMap(lap -> screws(lap, through).stream())
        .filter(screws -> screws.lines().stream().allMatch(isFree))
        .findFirst();
  }

  private static Optional<Lap> lap(TimberBody through, TimberFace side, TimberFace end) {
    boolean meet =
        side.outward().dot(end.outward()) < OPPOSITE
            && Math.abs(side.distance() + end.distance()) < TOUCH;
    return meet
        ? Optional.of(Lap.over(through, side, end)).filter(lap -> !lap.shared().isNothing())
        : Optional.empty();
  }

  private Optional<LapScrews> screws(Lap lap, TimberBody through) {
    ScrewDistances distances = new ScrewDistances(diameter, true);
    double side = distances.loadedEdge(0);
    double end = FROM_END * diameter;
    FlatFace free = lap.second().kept(lap.first().kept(lap.first(), side, end), outward -> side);
    double apart = distances.alongGrain(0);
    if (free.isNothing()) {
      return Optional.empty();
    }
    double low = tape.snapUp(Math.max(free.least(FacePlace::across), reached + diameter));
    double high = tape.snapDown(free.most(FacePlace::across));
    double left = free.least(FacePlace::along);
    double right = free.most(FacePlace::along);
    double middle = tape.snap((left + right) / 2);
    if (Tolerance.isLess(high - low, apart)
        || Tolerance.isLess(middle, left)
        || Tolerance.isMore(middle, right)) {
      return Optional.empty();
    }
    List<FacePlace> spots =
        Stream.of(low, high)
            .map(across -> new FacePlace(middle, across))
            .sorted(Comparator.comparingDouble(FacePlace::across))
            .toList();
    LapScrews.Asked.FromEdges edges = new LapScrews.Asked.FromEdges(side, end);
    return Optional.of(
        new LapScrews(
            spots,
            true,
            new LapScrews.Asked(edges, edges, apart),
            diameter,
            spots.stream().map(spot -> line(lap, spot, through)).toList()));
  }

  private static ThroughLine line(Lap lap, FacePlace spot, TimberBody through) {
    Vector3 on =
        lap.corner().plus(lap.along().times(spot.along())).plus(lap.across().times(spot.across()));
    double thick = through.through(on, lap.outward().times(-1));
    return new ThroughLine(on.minus(lap.outward().times(thick)), lap.outward(), thick);
  }
}
