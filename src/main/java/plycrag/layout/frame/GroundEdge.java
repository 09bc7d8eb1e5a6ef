package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Unturned;
import plycrag.layout.skin.FoldCut;
import plycrag.layout.skin.FoldCuts;

/**
 * The outer edge of what a facet's frame may take against the sheets' back, and how timber ends at
 * each side of it.
 *
 * <p>It goes as far beyond the facet as timber does at its folds. Where the frame goes on below the
 * facet, down to the floor, sides at folds go on in their planes, and all others straight down from
 * the facet's lower edge: a side that slants would carry the frame away from under the facet, or
 * into the side across from it.
 *
 * @param outer from its lowest corner, of two the left one
 * @param cuts one for each of its sides, in order
 */
record GroundEdge(Polygon outer, List<FoldCut> cuts) {
  /** A corner and how timber ends at the side that goes on from it. */
  private record Corner(Coordinate at, FoldCut cut) {}

  GroundEdge {
    cuts = List.copyOf(cuts);
  }

  /** The edge of a frame that ends at its facet's sides. */
  static GroundEdge of(FoldCuts cuts) {
    Coordinate[] ring = cuts.moved(FoldCut::timber).getExteriorRing().getCoordinates();
    List<Corner> corners = new ArrayList<>();
    for (int side = 0; side < cuts.sides().size(); side++) {
      corners.add(new Corner(ring[side], cuts.sides().get(side)));
    }
    return edge(corners);
  }

  /**
   * The edge of a frame that goes on below its facet; none where too little of a lower side would
   * be left down there for a frame, since those beside it come together.
   *
   * @param low where it ends, v in mm
   * @param least length of what is left of a lower side, mm
   */
  static Optional<GroundEdge> downTo(double low, double least, FoldCuts cuts) {
    Coordinate[] here = cuts.moved(FoldCut::timber).getExteriorRing().getCoordinates();
    List<LineString> sides = Shapes.outerEdges(cuts.facet().boundary());
    List<Corner> corners = new ArrayList<>();
    boolean isLeft = true;
    for (int side = 0; side < sides.size(); side++) {
      FoldCut cut = cuts.sides().get(side);
      if (isLow(sides.get(side))) {
        int before = (side + sides.size() - 1) % sides.size();
        int after = (side + 1) % sides.size();
        Coordinate left = below(here, before, side, low, cuts);
        Coordinate right = below(here, after, after, low, cuts);
        isLeft &= right.x - left.x >= least;
        if (!goesOn(here, before, cuts)) {
          corners.add(new Corner(here[side], FoldCut.none()));
        }
        corners.add(new Corner(left, cut));
        boolean goesOn = goesOn(here, after, cuts);
        corners.add(new Corner(right, goesOn ? cuts.sides().get(after) : FoldCut.none()));
        if (!goesOn) {
          corners.add(new Corner(here[after], cuts.sides().get(after)));
        }
      } else if (!isLow(sides.get((side + sides.size() - 1) % sides.size()))) {
        corners.add(new Corner(here[side], cut));
      }
    }
    return isLeft ? Optional.of(edge(corners)) : Optional.empty();
  }

  private static boolean isLow(LineString side) {
    return side.getEnvelopeInternal().getMaxY() <= 0;
  }

  /** Whether a side beside a lower one goes on down in its own line. */
  private static boolean goesOn(Coordinate[] ring, int side, FoldCuts cuts) {
    return cuts.facet().fold(side).isPresent()
        || Direction.of(Shapes.line(ring[side].x, ring[side].y, ring[side + 1].x, ring[side + 1].y))
            .equals(Direction.UP);
  }

  /** Where a lower side ends down there, beside another side. */
  private static Coordinate below(
      Coordinate[] ring, int beside, int corner, double low, FoldCuts cuts) {
    Coordinate at = ring[corner];
    if (!goesOn(ring, beside, cuts)) {
      return new Coordinate(at.x, low);
    }
    Coordinate from = ring[beside];
    Coordinate to = ring[beside + 1];
    return new Coordinate(from.x + (low - from.y) * (to.x - from.x) / (to.y - from.y), low);
  }

  /** Without sides that vanish where their neighbours come together. */
  private static GroundEdge edge(List<Corner> all) {
    List<Corner> corners = new ArrayList<>();
    for (Unturned.Corner left : Unturned.of(all.stream().map(Corner::at).toList()).corners()) {
      corners.add(new Corner(left.at(), all.get(left.side()).cut));
    }
    Comparator<Corner> fromBelow = Comparator.comparingDouble(corner -> corner.at.y);
    Corner lowest = Collections.min(corners, fromBelow.thenComparing(corner -> corner.at.x));
    Collections.rotate(corners, -corners.indexOf(lowest));
    return new GroundEdge(
        Shapes.ring(corners.stream().map(Corner::at).toList()),
        corners.stream().map(Corner::cut).toList());
  }
}
