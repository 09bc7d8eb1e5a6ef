package plycrag.check.clearance;

import java.util.List;
import java.util.stream.Stream;
import plycrag.finding.Cure;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Fold;

/** What would mend it where two members take the same space: it depends on whose they are. */
final class OverlapCure {
  private static final String LESS = "let them lean or turn less ([[facet]] angle, turn)";

  private final Layout layout;
  private final List<Overlap> overlaps;
  private final Tape tape;

  /**
   * For some overlaps.
   *
   * @param overlaps all of the wall
   */
  OverlapCure(Layout layout, List<Overlap> overlaps) {
    this.layout = layout;
    this.overlaps = overlaps;
    this.tape = layout.wall().tape();
  }

  /** What would mend one of them. */
  String of(Overlap overlap) {
    Member one = overlap.one().member();
    Member other = overlap.other().member();
    if (isOnRail(overlap.one(), other) || isOnRail(overlap.other(), one)) {
      return "raise the wall on to the rails under its posts "
          + Cure.length("[wall] raise", raise(), tape).words();
    }
    if (overlap.one().isSupport() || overlap.other().isSupport()) {
      return ofSupport(overlap);
    }
    return overlap.one().isOnFacetOf(overlap.other())
        ? new OpeningMove(overlap, tape)
            .words()
            .orElseGet(() -> larger(overlap.one().facet().orElseThrow()))
        : ofFrames(overlap.one(), overlap.other());
  }

  private static String larger(Facet facet) {
    return "make the facet larger or smaller ("
        + facet.sizeKeys()
        + "), the studs further apart ([frame] stud-spacing) or the sheets' least width greater"
        + " ([sheet] least-width)";
  }

  /** Whether a member is a frame's, and the other a rail on which that frame stands. */
  private static boolean isOnRail(StandingMember frame, Member rail) {
    return !frame.isSupport() && rail.role() == MemberRole.RAIL;
  }

  /** How high the wall's lowest edges stand when its frames are clear of rails, mm. */
  private double raise() {
    double by =
        overlaps.stream()
            .filter(overlap -> isOnRail(overlap.one(), overlap.other().member()))
            .mapToDouble(overlap -> overlap.apart(new Vector3(0, 0, -1)))
            .max()
            .orElse(0);
    return tape.snapUp(layout.facets().get(0).facet().raise() + by);
  }

  private String ofSupport(Overlap overlap) {
    if (!overlap.one().isSupport() || !overlap.other().isSupport()) {
      return "set what holds the wall up further behind it ([support] behind)";
    }
    if (overlap.one().run() == overlap.other().run()) {
      return "set the supports further apart ([support] bay), or the studs where they stand"
          + " ([frame] stud-spacing)";
    }
    return "what holds up the walls of facets "
        + lowest(overlap.one())
        + " and "
        + lowest(overlap.other())
        + " reaches into each other behind their corner; let them turn less ([[facet]] turn), or set"
        + " it at another distance behind them ([support] behind)";
  }

  private String lowest(StandingMember member) {
    return layout.runs().get(member.run()).get(0).facet().name();
  }

  private String ofFrames(StandingMember one, StandingMember other) {
    Facet first = one.facet().orElseThrow();
    Facet second = other.facet().orElseThrow();
    return "the frames of facets "
        + first.name()
        + " and "
        + second.name()
        + " reach into each other; "
        + (Math.abs(one.run() - other.run()) == 1 && !meet(first, second)
            ? atCorner(first, second)
            : Math.abs(one.run() - other.run()) > 1
                ? "make what stands between them wider by at least "
                    + apart(first, second, across(other))
                    + " ([[facet]] width)"
                : LESS);
  }

  private static boolean meet(Facet one, Facet other) {
    return one.folds().stream()
        .anyMatch(fold -> fold.other().equals(other.name()) && fold.length() > 0);
  }

  /** Neighbouring walls whose facets have no line in common: one does not run up to the corner. */
  private String atCorner(Facet first, Facet second) {
    Facet loose = first.isRectangle() ? second : first;
    String along =
        "let the outline of facet " + loose.name() + " run up to their corner ([[facet]] outline)";
    String away =
        "keep facet "
            + loose.name()
            + " at least "
            + apart(first, second, right(loose))
            + " further from their corner ([[facet]] shift)";
    boolean canShift = loose.fold(Fold.Place.BELOW).isPresent();
    if (loose.isRectangle()) {
      return canShift ? away : LESS;
    }
    return canShift ? along + ", or " + away : along;
  }

  /** The way along the lower edge of a facet to its right, in the room. */
  private static Vector3 right(Facet facet) {
    return facet
        .plane()
        .toRoom(new Vector3(1, 0, 0))
        .minus(facet.plane().toRoom(new Vector3(0, 0, 0)));
  }

  /** The way along the wall before the one that a member belongs to. */
  private Vector3 across(StandingMember member) {
    FloorAxes axes = layout.runs().get(member.run() - 1).get(0).facet().plane().floorAxes();
    return axes.toRoom(new Vector3(1, 0, 0)).minus(axes.toRoom(new Vector3(0, 0, 0)));
  }

  /** How far one facet's frame would have to move some way to be clear of another's. */
  private String apart(Facet first, Facet second, Vector3 way) {
    double most =
        overlaps.stream()
            .filter(overlap -> isBetween(overlap, first, second))
            .mapToDouble(overlap -> overlap.apart(way))
            .max()
            .orElse(0);
    return tape.text(tape.snapUp(most));
  }

  private static boolean isBetween(Overlap overlap, Facet first, Facet second) {
    return Stream.of(overlap.one(), overlap.other())
        .flatMap(member -> member.facet().stream())
        .toList()
        .equals(List.of(first, second));
  }
}
