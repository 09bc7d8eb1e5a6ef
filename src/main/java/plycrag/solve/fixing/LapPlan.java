package plycrag.solve.fixing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.units.Tape;

/**
 * Sets out the screws through one member into another beside it, or the bolts through both, on the
 * marking grid.
 *
 * <p>The force is taken along the grain of the first member: members side by side bend as one, so
 * that what their screws carry is the slip between them, which runs with the grain and either way;
 * and what lies across another, a brace or a beam, hands on what it carries along itself. So every
 * end is a loaded one. In members side by side every side is an unloaded one; across a member that
 * is crossed, either side may be loaded. Bolts across a fold hand on what people make on a face as
 * well: with them every side is a loaded one.
 */
public final class LapPlan {
  private static final double STEP = 0.1;
  private static final int AROUND = 2;

  private final ThroughFastener kind;
  private final double diameter;
  private final double greatest;
  private final double reached;
  private final Tape tape;

  /**
   * @param kind whether screws or bolts
   * @param diameter of the screws, mm; the timber is predrilled for them
   * @param greatest distance between them, mm
   * @param reached how deep the screws of the sheets end behind these, mm; where there is room the
   *     screws are set behind their points
   * @param tape on whose marking grid they are set
   */
  public LapPlan(
      ThroughFastener kind, double diameter, double greatest, double reached, Tape tape) {
    this.kind = kind;
    this.diameter = diameter;
    this.greatest = greatest;
    this.reached = reached;
    this.tape = tape;
  }

  /** The screws; empty where the two do not lie beside each other. */
  public Optional<LapScrews> of(TimberBody first, TimberBody second, List<TimberBody> others) {
    return of(first, second, others, List.of());
  }

  /**
   * The same among other fasteners.
   *
   * @param fasteners what is in all timber and on it already
   */
  public Optional<LapScrews> of(
      TimberBody first, TimberBody second, List<TimberBody> others, List<Solid> fasteners) {
    return Lap.of(first, second)
        .map(lap -> screws(new HeadRoom(lap, first, second, others, fasteners)));
  }

  private LapScrews screws(HeadRoom heads) {
    LapScrews found = setOut(heads);
    if (found.holds()) {
      return found;
    }
    double thickest = 0;
    long steps = Math.round(Tolerance.wholeUp(diameter / STEP)) - 1;
    for (long at = steps; Tolerance.atLeast(at * STEP, kind.thinnest()) && thickest == 0; at--) {
      double thinner = at * STEP;
      LapPlan plan = new LapPlan(kind, thinner, greatest, reached, tape);
      thickest = plan.setOut(heads).holds() ? thinner : 0;
    }
    return new LapScrews(found.spots(), false, found.asked(), thickest, found.lines());
  }

  private LapScrews.Asked asked(Lap lap) {
    LeastDistances distances = kind.of(diameter);
    return new LapScrews.Asked(
        new LapScrews.Asked.FromEdges(
            distances.loadedEdge(kind.acrossParallel()), distances.loadedEnd(1)),
        new LapScrews.Asked.FromEdges(
            distances.loadedEdge(Math.max(lap.sine(), kind.acrossParallel())),
            distances.loadedEnd(lap.cosine())),
        distances.alongGrain(1));
  }

  private LapScrews setOut(HeadRoom heads) {
    Lap lap = heads.lap();
    LapScrews.Asked asked = asked(lap);
    FlatFace room =
        lap.second()
            .kept(
                lap.first().kept(lap.first(), asked.first().side(), asked.first().end()),
                asked.second().side(),
                asked.second().end());
    boolean hasRoom = !room.isNothing();
    List<FacePlace> spots =
        lap.isParallel()
            ? row(hasRoom ? room : lap.shared(), heads, hasRoom)
            : hasRoom ? pair(room, heads) : inside(pair(lap.shared(), heads));
    boolean holds =
        hasRoom
            && spots.stream().allMatch(spot -> isInside(spot, lap, asked))
            && areApart(spots, lap);
    List<ThroughLine> lines = spots.stream().map(spot -> heads.line(spot, washer())).toList();
    return new LapScrews(spots, holds, asked, holds ? diameter : 0, lines);
  }

  /** How broad what bears on the outer sides is; a screw's head is sunk. */
  private double washer() {
    return kind == ThroughFastener.BOLT ? 2 * kind.head() * diameter : 0;
  }

  private static boolean isInside(FacePlace spot, Lap lap, LapScrews.Asked asked) {
    return Tolerance.atLeast(lap.first().slack(spot, asked.first().side(), asked.first().end()), 0)
        && Tolerance.atLeast(
            lap.second().slack(spot, asked.second().side(), asked.second().end()), 0);
  }

  /** Two screws keep apart if they do so along the grain of each member or across it. */
  private boolean areApart(List<FacePlace> spots, Lap lap) {
    for (int at = 1; at < spots.size(); at++) {
      FacePlace way = spots.get(at).minus(spots.get(at - 1));
      if (!isApart(way, lap.first().grain(), 0)
          || !isApart(way, lap.second().grain(), lap.sine())) {
        return false;
      }
    }
    return true;
  }

  private boolean isApart(FacePlace way, FacePlace grain, double sine) {
    LeastDistances distances = kind.of(diameter);
    double cosine = Math.sqrt(1 - sine * sine);
    return Tolerance.atLeast(Math.abs(way.dot(grain)), distances.alongGrain(cosine))
        || Tolerance.atLeast(Math.abs(way.cross(grain)), distances.acrossGrain(sine));
  }

  /** Evenly on one line along both members, one near each end. */
  private List<FacePlace> row(FlatFace room, HeadRoom heads, boolean hasRoom) {
    double low = room.least(FacePlace::across);
    double high = room.most(FacePlace::across);
    double behind = Math.max(low, Math.min(reached + diameter, high));
    double line = tape.snap(((heads.first().sheeted() ? behind : low) + high) / 2);
    line = Math.max(low, Math.min(line, high));
    FlatFace stretch = room.onLine(line);
    double from = stretch.least(FacePlace::along);
    double to = stretch.most(FacePlace::along);
    double inset = hasRoom ? 0 : (to - from) / 4;
    double first = tape.snapUp(from + inset);
    double last = tape.snapDown(to - inset);
    List<Span> taken = heads.taken(line, kind, diameter);
    double on = line;
    return new EvenPlaces(first, last, greatest, tape)
        .clearOf(taken).stream().map(place -> new FacePlace(place, on)).toList();
  }

  /** Two as far apart as there is room; where other fasteners are in the way, nearer. */
  private List<FacePlace> pair(FlatFace room, HeadRoom heads) {
    Lap lap = heads.lap();
    List<FacePlace> all =
        room.corners().stream().map(corner -> onGrid(corner, room)).distinct().toList();
    List<FacePlace> free = free(all.stream(), heads);
    if (free.size() < all.size()) {
      free = free(Stream.concat(all.stream(), inward(all, room)), heads);
    }
    List<FacePlace> corners = free.size() > 1 ? free : all;
    List<FacePlace> best = List.of(corners.get(0), corners.get(0));
    for (FacePlace one : corners) {
      for (FacePlace other : corners) {
        List<FacePlace> both = List.of(one, other);
        if (Tolerance.isMore(rank(both, lap), rank(best, lap))) {
          best = both;
        }
      }
    }
    return best.stream().sorted(Comparator.comparingDouble(FacePlace::along)).toList();
  }

  private List<FacePlace> free(Stream<FacePlace> spots, HeadRoom heads) {
    return spots.filter(spot -> heads.isFree(spot, kind, diameter)).toList();
  }

  /** Places on the way from each corner to all others. */
  private Stream<FacePlace> inward(List<FacePlace> corners, FlatFace room) {
    return corners.stream()
        .flatMap(
            one ->
                corners.stream()
                    .filter(other -> !other.equals(one))
                    .flatMap(
                        other ->
                            Stream.of(0.1, 0.2, 0.3)
                                .map(part -> onGrid(one.toward(other, part), room))));
  }

  /** Half way in from where they are, for want of room. */
  private List<FacePlace> inside(List<FacePlace> both) {
    FacePlace middle = both.get(0).toward(both.get(1), 0.5);
    return both.stream()
        .map(spot -> spot.toward(middle, 0.5))
        .map(spot -> new FacePlace(tape.snap(spot.along()), tape.snap(spot.across())))
        .toList();
  }

  private double rank(List<FacePlace> both, Lap lap) {
    double apart = both.get(1).minus(both.get(0)).length();
    return areApart(both, lap) ? apart + 1e6 : apart;
  }

  /** The place on the marking grid inside an area that is nearest to a corner of it. */
  private FacePlace onGrid(FacePlace corner, FlatFace room) {
    double grid = tape.unit().markingGrid();
    FacePlace best = corner;
    double nearest = Double.POSITIVE_INFINITY;
    for (int along = -AROUND; along <= AROUND; along++) {
      for (int across = -AROUND; across <= AROUND; across++) {
        FacePlace spot =
            new FacePlace(
                tape.snap(corner.along() + along * grid),
                tape.snap(corner.across() + across * grid));
        double off = spot.minus(corner).length();
        if (Tolerance.atLeast(room.slack(spot, 0, 0), 0) && off < nearest) {
          nearest = off;
          best = spot;
        }
      }
    }
    return best;
  }
}
