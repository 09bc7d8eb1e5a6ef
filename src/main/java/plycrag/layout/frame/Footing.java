package plycrag.layout.frame;

import java.util.Optional;
import plycrag.geometry.Trig;
import plycrag.layout.skin.FoldCuts;
import plycrag.wall.Facet;
import plycrag.wall.Frame;
import plycrag.wall.Wall;

/**
 * How a facet's frame, a rectangle in the plane of the sheets' back, meets the floor.
 *
 * <p>What it stands on is the floor, or base rails that lie on it.
 *
 * <p>The frame's lowest line is the front arris of its bottom plate where the facet leans out or is
 * plumb, the back arris where it leans back. Where there is room for it below the facet, the plate
 * stands on the floor there, to the marking grid; otherwise it lies flush with the facet's lower
 * edge, and whatever remains below is packed.
 *
 * @param plateLow where the bottom plate begins, v in mm
 * @param packing height of the frame's lowest line above the floor, mm; below zero the frame would
 *     stand in the floor
 * @param leastRaise the least height of the lower edge with which the plate can lie flush, mm
 * @param raiseForPlate the least height with room for a plate below the facet, mm
 * @param narrows whether there is room for the plate below, but the facet's sides come together
 *     before it, so that the frame ends above the floor
 */
public record Footing(
    double plateLow, double packing, double leastRaise, double raiseForPlate, boolean narrows) {

  /** That of a facet which stands on another. */
  static final Footing ON_FOLD = new Footing(0, 0, 0, 0, false);

  /**
   * A lowest facet that leans out further hangs: no frame is led down its slope to the floor (a
   * choice, no source), degrees.
   */
  private static final double HANGING = 60;

  /** A frame that stands on the floor has room for so many studs side by side. */
  private static final double STUDS = 2;

  /** Where the frame of a facet stands. */
  public static Footing of(Facet facet, Wall wall) {
    Frame frame = wall.frame();
    double thickness = wall.sheet().thickness();
    if (facet.standsOnFacet() || hangs(facet)) {
      return ON_FOLD;
    }
    double behind = facet.angle() < 0 ? thickness + frame.depth() : thickness;
    double lift = behind * Trig.sin(facet.angle()) - wall.base(facet);
    double cos = Trig.cos(facet.angle());
    double floor = wall.tape().snapUp(-(facet.raise() + lift) / cos);
    boolean hasRoom = floor <= -frame.breadth();
    boolean below = hasRoom && edge(facet, wall, floor).isPresent();
    double plateLow = below ? floor : 0;
    return new Footing(
        plateLow,
        facet.raise() + lift + plateLow * cos,
        Math.max(0, -lift),
        frame.breadth() * cos - lift,
        hasRoom && !below);
  }

  /** The edge of the frame of a facet that stands so. */
  GroundEdge edge(Facet facet, Wall wall) {
    return isBelowFacet()
        ? edge(facet, wall, plateLow).orElseThrow()
        : GroundEdge.of(FoldCuts.of(facet, wall));
  }

  private static Optional<GroundEdge> edge(Facet facet, Wall wall, double low) {
    return GroundEdge.downTo(
        low,
        STUDS * wall.frame().breadth(),
        FoldCuts.of(facet, wall),
        fold ->
            wall.facets().stream().noneMatch(one -> fold.other().equals(one.name()) && hangs(one)));
  }

  /** Whether a lowest facet's frame ends at its lower edge, above the floor. */
  public static boolean hangs(Facet facet) {
    return facet.angle() > HANGING;
  }

  /** Whether the plate lies below the facet, so that its lower edge needs backing of its own. */
  public boolean isBelowFacet() {
    return plateLow < 0;
  }
}
