package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Recognises holes in what a tool cuts: plunged by a tool of their diameter, or bored by a smaller
 * one that goes round.
 *
 * <p>A hole is bored if at the bottom the tool goes right round on a circle, by arcs or by moves so
 * short that none stands off the circle by more than {@link Accuracy#SHORT}, and stays within the
 * circle all the way down. A blind hole must leave no core.
 */
final class Boring {
  private static final double FULL_TURN = 359.9;

  private Boring() {}

  /** The visits, those that widen a hole round by round to one depth taken together. */
  static List<Visit> joined(List<Visit> visits) {
    List<Visit> all = new ArrayList<>();
    for (Visit visit : visits) {
      int last = all.size() - 1;
      if (last >= 0 && widens(all.get(last), visit)) {
        all.set(last, all.get(last).with(visit));
      } else {
        all.add(visit);
      }
    }
    return all;
  }

  private static boolean widens(Visit before, Visit after) {
    Optional<Circle> inner = circle(before);
    Optional<Circle> outer = circle(after);
    return inner.isPresent()
        && outer.isPresent()
        && before.isLike(after)
        && Math.abs(before.lowest() - after.lowest()) <= Accuracy.ON
        && inner.get().centre().distance(outer.get().centre()) <= Accuracy.ON
        && outer.get().radius() > inner.get().radius() + Accuracy.ON;
  }

  /** The hole that is made; none if something else is cut. */
  static Optional<MadeHole> of(Visit visit, Heights heights) {
    double lowest = visit.lowest();
    if (visit.isPlunge()) {
      return Optional.of(
          new MadeHole(
              visit,
              visit.start().coordinate(),
              visit.cutter().width(heights.sheet().top() - lowest),
              lowest,
              true,
              strokes(visit, lowest)));
    }
    boolean blind = lowest > heights.sheet().bottom() + Accuracy.ON;
    return circle(visit)
        .filter(circle -> !blind || !leavesCore(visit, circle))
        .map(
            circle ->
                new MadeHole(
                    visit,
                    circle.centre(),
                    2 * circle.radius() + visit.cutter().diameter(),
                    lowest,
                    turn(outermost(visit.below(lowest + Accuracy.ON)), circle) > 0,
                    1));
  }

  private static int strokes(Visit visit, double lowest) {
    return (int)
        visit.cuts().stream()
            .filter(
                cut ->
                    cut.to().z() <= lowest + Accuracy.ON && cut.from().z() > lowest + Accuracy.ON)
            .count();
  }

  private static Optional<Circle> circle(Visit visit) {
    List<CutMove> round = outermost(visit.below(visit.lowest() + Accuracy.ON));
    return Circle.through(ends(round)).filter(circle -> isBored(visit, round, circle));
  }

  private static boolean isBored(Visit visit, List<CutMove> round, Circle circle) {
    return Math.abs(turn(round, circle)) >= FULL_TURN
        && round.stream().allMatch(cut -> isOn(cut, circle))
        && ends(visit.cuts()).stream().allMatch(end -> circle.outside(end) <= Accuracy.ON);
  }

  /** How far cuts go round, degrees, positive against the clock. */
  private static double turn(List<CutMove> round, Circle circle) {
    return round.stream()
        .mapToDouble(
            cut -> ViewTurn.about(circle.centre(), cut.from().coordinate(), cut.to().coordinate()))
        .sum();
  }

  private static boolean isOn(CutMove cut, Circle circle) {
    return Math.abs(circle.outside(cut.from().coordinate())) <= Accuracy.ON
        && Math.abs(circle.outside(cut.to().coordinate())) <= Accuracy.ON
        && cut.distance(circle.centre()) >= circle.radius() - Accuracy.SHORT;
  }

  /** The cuts whose ends lie farthest from the middle of all. */
  private static List<CutMove> outermost(List<CutMove> cuts) {
    Envelope box = new Envelope();
    ends(cuts).forEach(box::expandToInclude);
    if (box.isNull()) {
      return List.of();
    }
    Coordinate middle = box.centre();
    double farthest = ends(cuts).stream().mapToDouble(middle::distance).max().orElse(0);
    return cuts.stream()
        .filter(cut -> !cut.isPlunge())
        .filter(cut -> cut.from().coordinate().distance(middle) > farthest - Accuracy.SHORT)
        .filter(cut -> cut.to().coordinate().distance(middle) > farthest - Accuracy.SHORT)
        .toList();
  }

  private static List<Coordinate> ends(List<CutMove> cuts) {
    List<Coordinate> ends = new ArrayList<>();
    for (CutMove cut : cuts) {
      ends.add(cut.from().coordinate());
      ends.add(cut.to().coordinate());
    }
    return ends;
  }

  /** Whether something stands in the middle, or between two rounds. */
  private static boolean leavesCore(Visit visit, Circle circle) {
    List<Double> rounds =
        ends(visit.below(visit.lowest() + Accuracy.ON)).stream()
            .map(circle.centre()::distance)
            .sorted()
            .toList();
    double cleared = 0;
    for (double round : rounds) {
      if (round - visit.cutter().radius() > cleared + Accuracy.ON) {
        return true;
      }
      cleared = round + visit.cutter().radius();
    }
    return false;
  }
}
