package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Trig;

/**
 * Whether tools go no deeper into fresh wood than they may at a time.
 *
 * <ol>
 *   <li>Wherever a router's bit goes, the wood before its edge was cut before to no more above it
 *       than the tool cuts in a pass, or lies no deeper below the sheet's top than that.
 *   <li>It never goes straight down into wood from above.
 *   <li>A drill that pecks drills no farther than that before it comes out.
 * </ol>
 */
final class DepthCheck {
  /** How far before its middle a tool meets wood that it is to cut, in its radii. */
  private static final double BEFORE = 0.95;

  /** What a tool cut so lately, in its radii along its way, is not what it finds cut. */
  private static final double LATELY = 0.25;

  /** How far apart places along a way are looked at, in radii. */
  private static final double STEP = 1;

  private static final double[] AHEAD = {-60, 0, 60};
  private static final double[] ROUND = {0, 90, 180, 270};

  private final Heights heights;
  private final Envelope sheet;
  private final List<Fault> faults = new ArrayList<>();

  private DepthCheck(Heights heights, Envelope sheet) {
    this.heights = heights;
    this.sheet = sheet;
  }

  /**
   * What is wrong with the depths of all that is cut.
   *
   * @param visits in the order in which they are made
   * @param sheet beside which a tool may go straight down
   */
  static List<Fault> faults(List<Visit> visits, Heights heights, Envelope sheet) {
    DepthCheck check = new DepthCheck(heights, sheet);
    CutSpots spots = new CutSpots();
    for (Visit visit : visits) {
      if (visit.cutter().routs()) {
        check.routed(visit, spots);
      } else if (visit.cutter().steps().isPresent()) {
        check.drilled(visit);
      }
    }
    return check.faults;
  }

  private void routed(Visit visit, CutSpots spots) {
    double pass = visit.cutter().steps().orElseThrow().pass() + Accuracy.SIZE;
    boolean told = false;
    for (CutMove cut : visit.cuts()) {
      if (!told && !isAllowed(cut, visit.cutter(), pass, spots)) {
        faults.add(
            new Fault(visit.program(), cut.line(), "goes deeper than the tool cuts at a time"));
        told = true;
      }
      spots.add(cut, visit.cutter().radius());
    }
    spots.restart();
  }

  private boolean isAllowed(CutMove cut, Cutter cutter, double pass, CutSpots spots) {
    if (cut.isPlunge()) {
      return isPlungeAllowed(cut, cutter, pass, spots);
    }
    double length = cut.from().coordinate().distance(cut.to().coordinate());
    double step = STEP * cutter.radius();
    int parts = spots.isDue(length, step) ? (int) Math.ceil(length / step) : 0;
    double angle = angle(cut);
    for (int part = 1; part <= parts; part++) {
      double along = (double) part / parts;
      double z = cut.from().z() + along * (cut.to().z() - cut.from().z());
      Coordinate at = spots.between(cut, along);
      double way = spots.way() + along * length - LATELY * cutter.radius();
      if (z < heights.sheet().top() - pass
          && !isCut(at, z + pass, angle, AHEAD, cutter.radius(), way, spots)) {
        return false;
      }
    }
    return true;
  }

  private boolean isPlungeAllowed(CutMove cut, Cutter cutter, double pass, CutSpots spots) {
    double radius = cutter.radius();
    Envelope near = sheet.copy();
    near.expandBy(radius - Accuracy.SIZE);
    boolean down = cut.to().z() < cut.from().z();
    if (!down || (!sheet.isNull() && !near.contains(cut.to().coordinate()))) {
      return true;
    }
    double top = heights.sheet().top();
    boolean fromAbove = cut.from().z() >= top - Accuracy.DIGIT;
    double least = fromAbove ? cut.to().z() : cut.to().z() + pass;
    boolean shallow = cut.to().z() >= top - (fromAbove ? Accuracy.ON : pass);
    double way = spots.way() - LATELY * radius;
    return shallow
        || isCut(cut.to().coordinate(), least + Accuracy.ON, 0, ROUND, radius, way, spots);
  }

  private static boolean isCut(
      Coordinate at,
      double height,
      double angle,
      double[] turns,
      double radius,
      double way,
      CutSpots spots) {
    for (double turn : turns) {
      double degrees = angle + turn;
      Coordinate before =
          new Coordinate(
              at.x + BEFORE * radius * Trig.cos(degrees),
              at.y + BEFORE * radius * Trig.sin(degrees));
      if (!spots.cover(before, height, way)) {
        return false;
      }
    }
    return true;
  }

  private static double angle(CutMove cut) {
    Coordinate from = cut.from().coordinate();
    Coordinate right = new Coordinate(from.x + 1, from.y);
    return ViewTurn.about(from, right, cut.to().coordinate());
  }

  private void drilled(Visit visit) {
    double peck =
        visit.cutter().steps().orElseThrow().peck().orElse(Double.POSITIVE_INFINITY)
            + Accuracy.PLACE;
    double drilled = heights.sheet().top();
    double begun = drilled;
    double last = Double.NaN;
    for (CutMove cut : visit.cuts()) {
      boolean goesOn = cut.from().z() == last;
      begun = goesOn ? begun : drilled;
      if (begun - cut.to().z() > peck) {
        faults.add(
            new Fault(visit.program(), cut.line(), "drills on without coming out for its chips"));
        return;
      }
      drilled = Math.min(drilled, cut.to().z());
      last = cut.to().z();
    }
  }
}
