package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import plycrag.check.CheckedLayout;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;

/**
 * How sheets and frames are drawn off each other, square to each facet. Where facets enclose a
 * corner, sheets that came forward would pass through each other, and so would frames that went
 * back where facets turn away from each other.
 *
 * @param sheets how far sheets come toward the climber, mm
 * @param frames how far frames go back, mm
 * @param up how far each frame of a run is lifted off the one below, mm
 */
record Explosion(double sheets, double frames, double up) {
  private static final double OFF = 700;
  private static final double UP = 350;

  /** Bodies that touch share less, mm. */
  private static final double TOUCHING = 1;

  private static final List<Explosion> MANNERS =
      List.of(new Explosion(OFF, 0, UP), new Explosion(0, OFF, UP));

  /** The first manner in which nothing passes through a part of another facet, else the first. */
  static Explosion of(CheckedLayout checked) {
    return MANNERS.stream()
        .filter(manner -> manner.isClear(checked))
        .findFirst()
        .orElse(MANNERS.get(0));
  }

  /** Where the sheets of a facet are drawn. */
  UnaryOperator<Vector3> sheets(FacetLayout facet, int level) {
    return inRoom(facet, -sheets, level);
  }

  /** Where the frame of a facet is drawn. */
  UnaryOperator<Vector3> frame(FacetLayout facet, int level) {
    return inRoom(facet, frames, level);
  }

  private UnaryOperator<Vector3> inRoom(FacetLayout facet, double behind, int level) {
    FacetPlane plane = facet.facet().plane();
    Vector3 lift = new Vector3(0, 0, level * up);
    return place -> plane.toRoom(new Vector3(place.x(), place.y(), place.z() + behind)).plus(lift);
  }

  private boolean isClear(CheckedLayout checked) {
    double thickness = checked.layout().wall().sheet().thickness();
    List<List<Solid>> facets = new ArrayList<>();
    for (List<FacetLayout> run : checked.layout().runs()) {
      for (int level = 0; level < run.size(); level++) {
        facets.add(bodies(run.get(level), level, thickness));
      }
    }
    for (int one = 0; one < facets.size(); one++) {
      for (int other = 0; other < one; other++) {
        if (meet(facets.get(one), facets.get(other))) {
          return false;
        }
      }
    }
    return true;
  }

  private List<Solid> bodies(FacetLayout facet, int level, double thickness) {
    Stream<Solid> pieces =
        facet.pieces().stream()
            .map(piece -> Solid.joining(piece.outline(), 0, piece.back(), thickness))
            .map(solid -> solid.mapped(sheets(facet, level)));
    Stream<Solid> members =
        facet.members().stream().map(member -> member.body(thickness).mapped(frame(facet, level)));
    return Stream.concat(pieces, members).toList();
  }

  private static boolean meet(List<Solid> ones, List<Solid> others) {
    return ones.stream()
        .anyMatch(
            one -> others.stream().anyMatch(other -> one.overlapsByMoreThan(TOUCHING, other)));
  }
}
