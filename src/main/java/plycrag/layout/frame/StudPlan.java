package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Backing;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.FoldCut;
import plycrag.layout.skin.LengthDivision;
import plycrag.layout.skin.Seam;
import plycrag.units.Tape;
import plycrag.wall.Frame;

/**
 * Where the studs of a facet stand: flush with its upright sides, at every seam that runs up,
 * beside openings, and in between evenly, on the marking grid, no further apart than the greatest
 * spacing.
 *
 * @param studs from left to right
 */
public record StudPlan(List<Stud> studs) {
  /**
   * A stud's place across.
   *
   * @param low its left side, mm
   * @param high its right side, mm
   * @param depth behind the sheets, mm
   * @param fixity what keeps it there
   * @param lean how far it moves to the right for each millimetre behind the sheets
   */
  public record Stud(double low, double high, double depth, Fixity fixity, double lean) {
    /** The middle of its breadth, mm. */
    double middle() {
      return (low + high) / 2;
    }

    static Stud of(Backing backing) {
      return new Stud(backing.low(), backing.high(), backing.depth(), backing.fixity(), 0);
    }
  }

  /**
   * Where studs must stand.
   *
   * @param place from which the spaces on both sides are divided, mm
   * @param studs from left to right; none where the facet only ends
   */
  record Station(double place, List<Stud> studs) {
    Station {
      studs = List.copyOf(studs);
    }

    /** Where the facet ends in a point or a slant. */
    static Station end(double place) {
      return new Station(place, List.of());
    }

    /** At an upright side; where timber that leans has no room for screws, with a square stud. */
    static Station edge(double place, boolean isRight, FoldCut cut, Frame frame) {
      List<Stud> studs = new ArrayList<>();
      int count = Backing.edgeCount(frame);
      double breadth = cut.breadth(frame.breadth());
      double depth = cut.depth(frame.depth());
      double lean = isRight ? cut.slope() : -cut.slope() + 0.0;
      for (int at = 0; at < count; at++) {
        double low = isRight ? place - (at + 1) * breadth : place + at * breadth;
        studs.add(new Stud(low, low + breadth, depth, Fixity.EDGE, lean));
      }
      if (cut.crowded()) {
        Stud last = studs.get(count - 1);
        double beside = isRight ? last.low() - frame.breadth() : last.high();
        studs.add(Stud.of(Backing.from(beside, frame, Fixity.EDGE)));
      }
      if (isRight) {
        Collections.reverse(studs);
      }
      return new Station(place, studs);
    }

    /** At a seam. */
    static Station seam(Seam seam, Frame frame) {
      return new Station(seam.middle(), Backing.of(seam, frame).stream().map(Stud::of).toList());
    }

    /** At a seam of another facet, each of its studs by itself. */
    static List<Station> inLine(Seam seam, Frame frame) {
      return Backing.of(seam, frame).stream()
          .map(Stud::of)
          .map(stud -> new Station(stud.middle(), List.of(stud)))
          .toList();
    }

    /** Beside an opening. */
    static Station opening(double low, Frame frame) {
      Stud stud = Stud.of(Backing.from(low, frame, Fixity.OPENING));
      return new Station(stud.middle(), List.of(stud));
    }

    /** Whether its studs lie within a stretch and clear of those of others. */
    boolean isClear(List<Station> others, LengthDivision.Span within) {
      return studs.stream()
          .allMatch(
              stud ->
                  within.low() <= stud.low()
                      && stud.high() <= within.high()
                      && others.stream()
                          .flatMap(other -> other.studs().stream())
                          .noneMatch(one -> one.low() < stud.high() && stud.low() < one.high()));
    }

    private double first() {
      return studs.isEmpty() ? place : studs.get(0).middle();
    }

    private double last() {
      return studs.isEmpty() ? place : studs.get(studs.size() - 1).middle();
    }

    private boolean isAt(double where) {
      return Tolerance.same(place, where);
    }

    private boolean has(Stud stud) {
      return studs.stream()
          .anyMatch(
              one ->
                  Tolerance.same(one.low(), stud.low()) && Tolerance.same(one.high(), stud.high()));
    }
  }

  public StudPlan {
    studs = List.copyOf(studs);
  }

  /** The studs at stations and between them, set out from the left or from the right. */
  static StudPlan of(List<Station> stations, Frame frame, Tape tape, boolean fromRight) {
    List<Station> ordered = distinct(stations);
    List<Stud> studs = new ArrayList<>();
    for (int at = 0; at < ordered.size(); at++) {
      if (at > 0) {
        EvenSpacing spacing =
            new EvenSpacing(
                ordered.get(at - 1).place(),
                ordered.get(at).place(),
                frame.studSpacing(),
                tape,
                fromRight);
        addBetween(ordered.get(at - 1), ordered.get(at), frame, spacing, studs);
      }
      studs.addAll(ordered.get(at).studs());
    }
    studs.sort(Comparator.comparingDouble(Stud::middle));
    return new StudPlan(studs);
  }

  /** Studs that stay, and others with their middles at places between them. */
  static StudPlan of(List<Stud> kept, List<Double> middles, Frame frame) {
    List<Stud> studs = new ArrayList<>(kept);
    middles.forEach(middle -> studs.add(free(middle, frame)));
    studs.sort(Comparator.comparingDouble(Stud::middle));
    return new StudPlan(studs);
  }

  private static Stud free(double middle, Frame frame) {
    double low = middle - frame.breadth() / 2;
    return new Stud(low, low + frame.breadth(), frame.depth(), Fixity.FREE, 0);
  }

  /** In order, each stud once: that of a side or an opening may be one of a seam's, too. */
  private static List<Station> distinct(List<Station> stations) {
    List<Station> distinct = new ArrayList<>();
    for (Station station : stations) {
      List<Stud> studs =
          station.studs().stream()
              .filter(stud -> distinct.stream().noneMatch(other -> other.has(stud)))
              .toList();
      boolean known =
          station.studs().isEmpty()
              ? distinct.stream().anyMatch(other -> other.isAt(station.place()))
              : studs.isEmpty();
      if (!known) {
        distinct.add(new Station(station.place(), studs));
      }
    }
    distinct.sort(Comparator.comparingDouble(Station::place));
    return distinct;
  }

  /** As few as keep the spacing once their middles lie on the marking grid. */
  private static void addBetween(
      Station from, Station to, Frame frame, EvenSpacing spacing, List<Stud> studs) {
    for (double middle : spacing.middles(from.last(), to.first())) {
      studs.add(free(middle, frame));
    }
  }

  /** The stud that takes a stretch, if one does. */
  public Optional<Stud> at(double low, double high) {
    return studs.stream()
        .filter(stud -> Tolerance.same(stud.low(), low))
        .filter(stud -> Tolerance.same(stud.high(), high))
        .findFirst();
  }

  /** The bay between two neighbouring studs that holds a stretch, if one does. */
  Optional<LengthDivision.Span> bay(double low, double high) {
    for (int next = 1; next < studs.size(); next++) {
      double from = studs.get(next - 1).high();
      double to = studs.get(next).low();
      if (Tolerance.atLeast(low, from) && Tolerance.atMost(high, to)) {
        return Optional.of(new LengthDivision.Span(from, to));
      }
    }
    return Optional.empty();
  }
}
