package plycrag.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.geometry.Tolerance;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Values;
import plycrag.read.text.Faults;
import plycrag.units.NearestWord;
import plycrag.units.Printable;
import plycrag.units.Tape;
import plycrag.wall.FacetPoint;
import plycrag.wall.Profile;
import plycrag.wall.Profile.Loss;

/** What the facets of a file require of each other, and what one facet's keys do. */
final class FacetChecks {
  /** Two walls turned less from each other that lean apart meet far off, degrees. */
  private static final double LEAST_TURN = 5;

  /** A facet that leans so far has no height, degrees. */
  private static final double LEVEL = 90;

  private final List<Values> facets;
  private final Faults faults;

  /**
   * Checks one file.
   *
   * @param facets as the file gives them, in order
   * @param faults where findings go
   */
  FacetChecks(List<Values> facets, Faults faults) {
    this.facets = facets;
    this.faults = faults;
  }

  void run() {
    for (int at = 0; at < facets.size(); at++) {
      checkHeight(facets.get(at));
      checkOutline(facets.get(at));
      checkTop(at);
    }
    checkWalls();
  }

  /**
   * Reports facets of which the walls beside them leave nothing that can be made.
   *
   * @param wallWidth of facets that have none of their own, mm
   * @param raise height of the lowest edges above the floor, mm
   */
  void checkLosses(double wallWidth, double raise) {
    Map<String, Loss> lost = Profile.lost(FacetTable.records(facets, wallWidth), raise);
    List<String> names = FacetTable.names(facets);
    for (int at = 0; at < names.size(); at++) {
      if (lost.containsKey(names.get(at))) {
        report(facets.get(at), names.get(at), lost.get(names.get(at)));
      }
    }
  }

  private void report(Values facet, String name, Loss loss) {
    String left =
        switch (loss) {
          case WHOLE -> "leave nothing of facet " + name;
          case FOOT -> "leave nothing of the lower edge of facet " + name;
          case TOP ->
              "leave nothing of the upper edge of facet " + name + ", on which another stands";
          case DIVIDED -> "cut facet " + name + " in two";
        };
    Parameter<?> key = facet.isGiven(FacetTable.OUTLINE) ? FacetTable.OUTLINE : FacetTable.WIDTH;
    faults.add(
        facet.key(key),
        facet.place(key),
        "the walls beside it, where they meet it, " + left,
        "a facet that is wider than they lean over it is allowed",
        "make it wider, or let it or the wall beside it lean less or turn less");
  }

  /** A height tells how long a facet is, unless that is told already or the facet is level. */
  private void checkHeight(Values facet) {
    Parameter<Double> height = FacetTable.VERTICAL_HEIGHT;
    if (facet.given(height).isEmpty() || !facet.isSound(FacetTable.ANGLE)) {
      return;
    }
    if (facet.isGiven(FacetTable.LENGTH)) {
      fault(facet, height, "a vertical-height stands beside a length", "one of the two is allowed");
    } else if (facet.get(FacetTable.ANGLE) >= LEVEL) {
      fault(
          facet,
          height,
          "a roof is not high: at 90 degrees no height tells how long it is",
          "a length is allowed there");
    } else {
      checkLength(facet);
    }
  }

  private void checkLength(Values facet) {
    LengthKind allowed = (LengthKind) FacetTable.LENGTH.kind();
    double length = FacetTable.length(facet);
    if (!allowed.range().holds(length)) {
      fault(
          facet,
          FacetTable.VERTICAL_HEIGHT,
          "at that height the facet is "
              + new Tape(facet.unit()).text(length)
              + " long up the slope",
          "a height that makes it " + allowed.allowed(List.of(facet.unit())) + " long is allowed");
    }
  }

  private void fault(Values facet, Parameter<?> key, String wrong, String allowed) {
    faults.add(facet.key(key), facet.place(key), wrong, allowed);
  }

  private void checkOutline(Values facet) {
    Optional<List<FacetPoint>> outline = facet.given(FacetTable.OUTLINE);
    if (outline.isEmpty()) {
      return;
    }
    for (Parameter<?> size :
        List.of(FacetTable.LENGTH, FacetTable.VERTICAL_HEIGHT, FacetTable.WIDTH)) {
      if (facet.isGiven(size)) {
        faults.add(
            facet.key(size),
            facet.place(size),
            "a " + size.key() + " stands beside an outline",
            "one of the two is allowed");
      }
    }
    List<FacetPoint> corners = outline.get();
    double left = corners.stream().mapToDouble(FacetPoint::across).min().orElseThrow();
    if (left > Tolerance.GRID || !isLevelAt(corners, 0)) {
      faults.add(
          facet.key(FacetTable.OUTLINE),
          facet.place(FacetTable.OUTLINE),
          "the outline does not begin at 0",
          "a lowest side that lies level at 0, and a leftmost corner at 0, are allowed");
    }
    checkSize(facet, corners);
  }

  /** What is too small for a facet as a rectangle is so in any shape. */
  private void checkSize(Values facet, List<FacetPoint> corners) {
    double width = corners.stream().mapToDouble(FacetPoint::across).max().orElseThrow();
    double length = corners.stream().mapToDouble(FacetPoint::up).max().orElseThrow();
    if (Tolerance.isLess(Math.min(width, length), FacetTable.SMALLEST)) {
      faults.add(
          facet.key(FacetTable.OUTLINE),
          facet.place(FacetTable.OUTLINE),
          "the outline is too small for a facet",
          "one of 300 mm (11.812 in) or more across and up the slope is allowed");
    }
  }

  /** What carries another facet has a level upper side. */
  private void checkTop(int at) {
    boolean carries = at + 1 < facets.size() && !facets.get(at + 1).isGiven(FacetTable.BESIDE);
    Values facet = facets.get(at);
    if (!carries || facet.given(FacetTable.OUTLINE).isEmpty()) {
      return;
    }
    List<FacetPoint> corners = facet.get(FacetTable.OUTLINE);
    double top = corners.stream().mapToDouble(FacetPoint::up).max().orElseThrow();
    if (!isLevelAt(corners, top)) {
      faults.add(
          facet.key(FacetTable.OUTLINE),
          facet.place(FacetTable.OUTLINE),
          "the outline has no level side on top, and "
              + facets.get(at + 1).path()
              + " stands on it",
          "a highest side that lies level is allowed");
    }
  }

  private static boolean isLevelAt(List<FacetPoint> corners, double height) {
    for (int at = 0; at < corners.size(); at++) {
      FacetPoint next = corners.get((at + 1) % corners.size());
      if (Math.abs(corners.get(at).up() - height) < Tolerance.GRID
          && Math.abs(next.up() - height) < Tolerance.GRID) {
        return true;
      }
    }
    return false;
  }

  private void checkWalls() {
    List<String> names = FacetTable.names(facets);
    List<String> free = new ArrayList<>();
    for (int at = 0; at < facets.size(); at++) {
      Values facet = facets.get(at);
      if (facet.isGiven(FacetTable.BESIDE)) {
        checkBeside(facet, free);
        checkTurn(facet);
        facet.given(FacetTable.BESIDE).ifPresent(free::remove);
      } else if (facet.isGiven(FacetTable.TURN)) {
        faults.add(
            facet.key(FacetTable.TURN),
            facet.place(FacetTable.TURN),
            "a turn stands without beside",
            "a turn is allowed where a wall begins beside another");
      }
      if (at == 0 || facet.isGiven(FacetTable.BESIDE)) {
        free.add(names.get(at));
      }
    }
  }

  private void checkBeside(Values facet, List<String> free) {
    facet
        .given(FacetTable.BESIDE)
        .filter(other -> !free.contains(other))
        .ifPresent(
            other ->
                faults.add(
                    facet.key(FacetTable.BESIDE),
                    facet.place(FacetTable.BESIDE),
                    "no wall with a free right side begins with "
                        + Printable.quoted(other)
                        + " above this one",
                    free.isEmpty()
                        ? "the first facet stands beside none"
                        : "one of " + String.join(", ", free) + " is allowed",
                    NearestWord.find(other, free)
                        .map(near -> "the nearest is " + near)
                        .orElse("")));
  }

  private void checkTurn(Values facet) {
    if (!facet.isSound(FacetTable.TURN)) {
      return;
    }
    double turn = facet.get(FacetTable.TURN);
    if (turn != 0 && Math.abs(turn) < LEAST_TURN) {
      faults.add(
          facet.key(FacetTable.TURN),
          facet.place(FacetTable.TURN),
          "walls turned less than 5 degrees from each other meet too far away",
          "0, for walls side by side, or -90 to -5 or 5 to 90 degrees are allowed");
    }
  }
}
