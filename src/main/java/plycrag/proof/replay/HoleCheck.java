package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import plycrag.units.Decimal;

/** Holds the holes that are made against those that are to be made. */
final class HoleCheck {
  private static final int DECIMALS = 3;

  private final List<Expected.Hole> holes;
  private final Set<Integer> made = new TreeSet<>();
  private final List<Fault> faults = new ArrayList<>();

  private HoleCheck(List<Expected.Hole> holes) {
    this.holes = holes;
  }

  /**
   * What is wrong with the holes.
   *
   * @param where all programs of the face together, for what is missing
   */
  static List<Fault> faults(String where, List<Expected.Hole> holes, List<MadeHole> made) {
    HoleCheck check = new HoleCheck(holes);
    made.forEach(check::compare);
    IntStream.range(0, holes.size())
        .filter(at -> !check.made.contains(at))
        .mapToObj(at -> new Fault(where, 0, name(holes.get(at)) + " is not made"))
        .forEach(check.faults::add);
    return List.copyOf(check.faults);
  }

  private void compare(MadeHole hole) {
    Optional<Integer> meant = meant(hole);
    if (meant.isEmpty()) {
      add(hole, "a hole at " + place(hole.centre()) + ", where none is to be");
      return;
    }
    Expected.Hole to = holes.get(meant.get());
    if (!made.add(meant.get()) || hole.strokes() > 1) {
      add(hole, name(to) + " is made twice");
    }
    boolean judged = hole.visit().cutter().routs();
    require(hole, hole.left() || !judged, name(to) + " is bored the wrong way round");
    double off = hole.centre().distance(centre(to));
    require(hole, off <= Accuracy.PLACE, name(to) + " is off by " + mm(off));
    require(
        hole,
        Math.abs(hole.diameter() - to.diameter()) <= Accuracy.SIZE,
        name(to) + " becomes " + mm(hole.diameter()) + " wide, not " + mm(to.diameter()));
    require(
        hole,
        Math.abs(hole.bottom() - to.bottom()) <= Accuracy.PLACE,
        name(to) + " goes to Z" + mm(hole.bottom()) + ", not Z" + mm(to.bottom()));
  }

  /** The hole that it is most like, of those in whose circle its centre lies. */
  private Optional<Integer> meant(MadeHole hole) {
    return IntStream.range(0, holes.size())
        .boxed()
        .filter(at -> centre(holes.get(at)).distance(hole.centre()) < holes.get(at).diameter() / 2)
        .min(Comparator.comparingDouble(at -> unlikeness(hole, holes.get(at))));
  }

  private static double unlikeness(MadeHole hole, Expected.Hole other) {
    return hole.centre().distance(centre(other))
        + Math.abs(hole.diameter() - other.diameter())
        + Math.abs(hole.bottom() - other.bottom());
  }

  private static Coordinate centre(Expected.Hole hole) {
    return new Coordinate(hole.x(), hole.y());
  }

  private void require(MadeHole hole, boolean holds, String otherwise) {
    if (!holds) {
      add(hole, otherwise);
    }
  }

  private void add(MadeHole hole, String sentence) {
    faults.add(hole.visit().fault(sentence));
  }

  private static String name(Expected.Hole hole) {
    return "hole " + hole.mark();
  }

  private static String place(Coordinate place) {
    return mm(place.x) + ", " + mm(place.y);
  }

  private static String mm(double length) {
    return Decimal.of(length, DECIMALS);
  }
}
