package plycrag.wall;

import java.util.Optional;
import plycrag.catalog.ScrewCatalog;
import plycrag.catalog.SoldScrew;
import plycrag.catalog.SoldScrew.Use;
import plycrag.geometry.Tolerance;
import plycrag.units.Tape;
import plycrag.wall.Frame.SeamBacking;

/**
 * How long a screw must be to hold, and may be so that it does not come out.
 *
 * @param least mm
 * @param most mm
 */
public record ScrewReach(double least, double most) {
  /** EN 1995-1-1, 8.7.2: a thread is at least six diameters deep in the second member. */
  public static final double DEPTH_IN_DIAMETERS = 6;

  /** What must remain before the far side of a member (common practice, no source), mm. */
  public static final double FAR_SIDE = 5;

  /** Through a sheet into the frame; timber that lies flat behind seams is the shallowest. */
  public static ScrewReach throughSheet(double thickness, Frame frame, Clearances clearance) {
    boolean flat = frame.seams() == SeamBacking.FLAT;
    double timber = flat ? frame.breadth() : frame.depth();
    return new ScrewReach(
        thickness + clearance.point().penetration(),
        thickness + timber - clearance.point().toFarSide());
  }

  /** Through one member into another that lies beside it. */
  public static ScrewReach sideBySide(double breadth, double diameter) {
    return new ScrewReach(breadth + DEPTH_IN_DIAMETERS * diameter, 2 * breadth - FAR_SIDE);
  }

  /** Whether a length does both, mm. */
  public boolean allows(double length) {
    return Tolerance.atLeast(length, least) && Tolerance.atMost(length, most);
  }

  /** One that does both and is sold between members or, if none is, that a tape reads; mm. */
  public double middling(double diameter, Tape tape) {
    double marked = tape.snapUp(least);
    return shortest(Use.MEMBER, diameter)
        .map(SoldScrew::length)
        .orElse(allows(marked) ? marked : (least + most) / 2);
  }

  /** The shortest screw of a diameter in the catalogue that does both. */
  public Optional<SoldScrew> shortest(Use use, double diameter) {
    return ScrewCatalog.shortest(use, diameter, least, most);
  }

  /** A length that does: the usual one or, where it does not, the shortest in the catalogue. */
  public double choose(double usual, Use use, double diameter) {
    return allows(usual) ? usual : shortest(use, diameter).map(SoldScrew::length).orElse(usual);
  }
}
