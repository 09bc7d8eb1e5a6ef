package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Unturned;
import plycrag.layout.skin.FoldCut;
import plycrag.layout.skin.FoldCuts;
import plycrag.wall.Fold;

/**
 * The outer edge of what a facet's frame may take against the sheets' back, and how timber ends at
 * each side of it.
 *
 * <p>It goes as far beyond the facet as timber does at its folds. Where the frame goes on below the
 * facet, down to the floor, sides at folds go on in their planes, as the frames beside them do. All
 * others go straight down from the facet's lower edge: a side that slants would carry the frame
 * away from under the facet, or into the side across from it.
 *
 * @param outer from its lowest corner, of two the left one
 * @param cuts one for each of its sides, in order
 */
record GroundEdge(Polygon outer, List<FoldCut> cuts) {
  /** A corner and how timber ends at the side that goes on from it. */
  private record Corner(Coordinate at, FoldCut cut) {}

  /**
   * A side of the facet, moved outward as far as timber goes.
   *
   * @param from where it begins
   * @param to where it ends
   * @param cut how timber ends at it
   * @param isLow whether it is one on which the facet stands
   * @param goesOn whether it goes on down in its own line: upright, or at a fold with a facet whose
   *     frame is led down too
   */
  private record Side(Coordinate from, Coordinate to, FoldCut cut, boolean isLow, boolean goesOn) {
    static List<Side> of(FoldCuts cuts, Predicate<Fold> isLedDown) {
      List<LineString> sides = Shapes.outerEdges(cuts.facet().boundary());
      Unturned moved = cuts.moved(FoldCut::timber);
      List<LineString> lines = Shapes.outerEdges(moved.area());
      return IntStream.range(0, lines.size())
          .mapToObj(
              at -> {
                int number = moved.corners().get(at).side();
                boolean isFold = cuts.facet().fold(number).filter(isLedDown).isPresent();
                return new Side(
                    lines.get(at).getCoordinateN(0),
                    lines.get(at).getCoordinateN(1),
                    cuts.sides().get(number),
                    sides.get(number).getEnvelopeInternal().getMaxY() <= 0,
                    isFold || Direction.of(lines.get(at)).equals(Direction.UP));
              })
          .toList();
    }

    /** Where a lower side that ends at a corner with this one ends further down. */
    Coordinate below(Coordinate corner, double low) {
      return goesOn
          ? new Coordinate(from.x + (low - from.y) * (to.x - from.x) / (to.y - from.y), low)
          : new Coordinate(corner.x, low);
    }
  }

  GroundEdge {
    cuts = List.copyOf(cuts);
  }

  /** The edge of a frame that ends at its facet's sides. */
  static GroundEdge of(FoldCuts cuts) {
    return edge(
        Side.of(cuts, fold -> true).stream().map(side -> new Corner(side.from, side.cut)).toList());
  }

  /**
   * The edge of a frame that goes on below its facet; none where too little of a lower side would
   * be left down there for a frame, since those beside it come together.
   *
   * @param low where it ends, v in mm
   * @param least length of what is left of a lower side, mm
   * @param isLedDown whether the frame beyond a fold goes on down beside it
   */
  static Optional<GroundEdge> downTo(
      double low, double least, FoldCuts cuts, Predicate<Fold> isLedDown) {
    List<Side> sides = Side.of(cuts, isLedDown);
    List<Corner> corners = new ArrayList<>();
    boolean isLeft = true;
    for (int at = 0; at < sides.size(); at++) {
      Side side = sides.get(at);
      Side before = sides.get((at + sides.size() - 1) % sides.size());
      if (side.isLow) {
        Side after = sides.get((at + 1) % sides.size());
        Coordinate left = before.below(side.from, low);
        Coordinate right = after.below(side.to, low);
        isLeft &= right.x - left.x >= least;
        if (!before.goesOn) {
          corners.add(new Corner(side.from, FoldCut.none()));
        }
        corners.add(new Corner(left, side.cut));
        corners.add(new Corner(right, after.goesOn ? after.cut : FoldCut.none()));
        if (!after.goesOn) {
          corners.add(new Corner(side.to, after.cut));
        }
      } else if (!before.isLow) {
        corners.add(new Corner(side.from, side.cut));
      }
    }
    return isLeft ? Optional.of(edge(corners)) : Optional.empty();
  }

  /** From its lowest corner, without loops where sides that went on down cross. */
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
