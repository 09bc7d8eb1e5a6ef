package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import plycrag.units.Decimal;

/**
 * Holds what is cut sideways against one contour, the tool's radius taken into account.
 *
 * <ol>
 *   <li>No tool comes nearer to the contour than its radius, and none is on the piece's side.
 *   <li>All along the contour the tool passes at its radius, down to the last pass, but for
 *       bridges, the sheet's own edges and inside corners that it cannot reach.
 *   <li>Nothing is cut lower than the last pass.
 *   <li>No tool leaves its way beside some contour for the waste.
 * </ol>
 */
final class ContourCheck {
  /** A cut farther off belongs to something else: what is left for a last pass is less, mm. */
  private static final double BESIDE = 1;

  /** So far beyond the contour it is looked whether something is kept, mm. */
  private static final double BEYOND = 0.1;

  private final Expected.Contour contour;
  private final OutlineRing outline;
  private final List<Visit> visits;
  private final List<Fault> faults = new ArrayList<>();

  private ContourCheck(Expected.Contour contour, List<Visit> routed) {
    this.contour = contour;
    this.outline = new OutlineRing(contour);
    this.visits = routed.stream().filter(visit -> distance(visit) <= reach(visit)).toList();
  }

  /**
   * What is wrong with all that is cut sideways.
   *
   * @param where all programs of the face together, for what is missing
   * @param routed what makes no hole
   */
  static List<Fault> faults(String where, Expected expected, List<Visit> routed) {
    List<Fault> faults = new ArrayList<>();
    List<Visit> strays = new ArrayList<>(routed);
    List<ContourCheck> checks = new ArrayList<>();
    for (Expected.Contour contour : expected.contours()) {
      ContourCheck check = new ContourCheck(contour, routed);
      checks.add(check);
      strays.removeAll(check.visits);
      check.visits.forEach(check::compare);
      check.around(where, expected);
      faults.addAll(check.faults);
    }
    for (Visit visit : routed) {
      if (strays.contains(visit)) {
        faults.add(visit.fault("a cut where none is to be"));
      } else {
        astray(visit, checks, expected).ifPresent(faults::add);
      }
    }
    return faults;
  }

  /** Where a tool first leaves all ways that it may follow: waste may be an offcut to be kept. */
  private static Optional<Fault> astray(Visit visit, List<ContourCheck> checks, Expected expected) {
    double radius = visit.cutter().radius();
    List<OutlineRing> near =
        checks.stream()
            .filter(check -> check.visits.contains(visit))
            .map(check -> check.outline)
            .toList();
    return visit.cuts().stream()
        .filter(
            cut ->
                near.stream()
                    .noneMatch(one -> one.isFollowed(cut, radius, expected.sheet()::contains)))
        .findFirst()
        .map(cut -> new Fault(visit.program(), cut.line(), "leaves the way beside an outline"));
  }

  private double distance(Visit visit) {
    return visit.cuts().stream().mapToDouble(outline::distance).min().orElseThrow();
  }

  private static double reach(Visit visit) {
    return visit.cutter().radius() + BESIDE;
  }

  private void compare(Visit visit) {
    double deep = visit.cutter().radius() - distance(visit);
    boolean inPiece =
        visit.cuts().stream().anyMatch(cut -> !outline.isInWaste(cut.to().coordinate()));
    if (inPiece || deep > Accuracy.SIZE) {
      String into = inPiece ? "" : " by " + mm(deep);
      faults.add(visit.fault("cuts into " + contour.mark() + into));
    }
    contour
        .keptOn()
        .filter(side -> !isKeptOn(side, visit))
        .ifPresent(
            side -> faults.add(visit.fault("cuts " + contour.mark() + " the wrong way round")));
    if (visit.lowest() < contour.bottom() - Accuracy.PLACE) {
      faults.add(visit.fault("cuts " + contour.mark() + " to Z" + mm(visit.lowest())));
    }
  }

  /** Judged where the tool goes along the contour, not where it comes to it. */
  private boolean isKeptOn(Expected.Side side, Visit visit) {
    double radius = visit.cutter().radius();
    return visit.cuts().stream()
        .filter(cut -> !cut.isPlunge() && isAlong(cut, radius))
        .allMatch(cut -> !outline.isInWaste(beside(cut, side, radius + BEYOND)));
  }

  /** Beside the middle of a way, seen along it. */
  private static Coordinate beside(CutMove cut, Expected.Side side, double away) {
    Coordinate from = cut.from().coordinate();
    Coordinate to = cut.to().coordinate();
    double part = (side == Expected.Side.LEFT ? away : -away) / from.distance(to);
    return new Coordinate(
        (from.x + to.x) / 2 - part * (to.y - from.y), (from.y + to.y) / 2 + part * (to.x - from.x));
  }

  private boolean isAlong(CutMove cut, double radius) {
    boolean isLong = cut.from().beside(cut.to()) > BESIDE;
    return isLong && outline.nearest(cut.middle()) <= radius + Accuracy.SIZE;
  }

  private void around(String where, Expected expected) {
    List<OutlineRing.Sample> asked =
        outline.samples().stream()
            .filter(one -> !expected.isOnEdge(one.place(), Accuracy.SIZE))
            .toList();
    if (visits.isEmpty() && !asked.isEmpty()) {
      add(where, "is not cut");
    } else {
      around(where, asked);
    }
  }

  private void around(String where, List<OutlineRing.Sample> asked) {
    double radius = visits.stream().mapToDouble(one -> one.cutter().radius()).min().orElse(0);
    List<OutlineRing.Sample> reachable =
        asked.stream().filter(one -> outline.isReachable(one, radius)).toList();
    CutAway last = new CutAway(visits, contour.bottom() + Accuracy.PLACE, Accuracy.SIZE);
    List<UncutStretch> uncut = UncutStretch.of(reachable, sample -> last.covers(sample.place()));
    Optional<Expected.Bridges> bridges = contour.bridges();
    if (uncut.size() > bridges.map(Expected.Bridges::count).orElse(0)) {
      Coordinate place = uncut.get(0).samples().get(0).place();
      add(where, "is not cut at " + mm(place.x) + ", " + mm(place.y));
    } else if (bridges.isPresent()) {
      uncut.forEach(one -> bridge(where, one, bridges.get()));
      if (bridges.get().least() > 0) {
        standing(where, reachable, bridges.get(), uncut.size());
      }
    }
  }

  /** As many bridges stand as must, and all that are left, as high and as long as they must. */
  private void standing(
      String where, List<OutlineRing.Sample> reachable, Expected.Bridges bridges, int left) {
    CutAway below = CutAway.into(visits, bridges.top() - Accuracy.PLACE, Accuracy.SIZE);
    long whole =
        UncutStretch.of(reachable, sample -> below.covers(sample.place())).stream()
            .filter(one -> one.length() >= bridges.length() - 2 * UncutStretch.ROUNDING)
            .count();
    int asked = Math.max(bridges.least(), left);
    if (whole < asked) {
      add(where, "is held by " + whole + " bridges, not by " + asked);
    }
  }

  private void bridge(String where, UncutStretch uncut, Expected.Bridges bridges) {
    if (uncut.length() > bridges.length() + bridges.slope() + UncutStretch.ROUNDING) {
      add(where, "has a bridge of " + mm(uncut.length()));
    }
    CutAway above = new CutAway(visits, bridges.top() + Accuracy.PLACE, Accuracy.SIZE);
    if (!uncut.samples().stream().allMatch(sample -> above.covers(sample.place()))) {
      add(where, "has a bridge that is too thick");
    }
  }

  private void add(String where, String sentence) {
    faults.add(new Fault(where, 0, contour.mark() + " " + sentence));
  }

  private static String mm(double length) {
    return Decimal.of(length, 3);
  }
}
