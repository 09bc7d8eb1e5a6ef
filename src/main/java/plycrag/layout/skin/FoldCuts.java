package plycrag.layout.skin;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Unturned;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * How sheets and timber end at every side of a facet.
 *
 * @param facet the facet
 * @param sides one cut for each side of its boundary
 */
public record FoldCuts(Facet facet, List<FoldCut> sides) {
  public FoldCuts {
    sides = List.copyOf(sides);
  }

  public static FoldCuts of(Facet facet, Wall wall) {
    int count = facet.boundary().getExteriorRing().getNumPoints() - 1;
    return new FoldCuts(
        facet,
        IntStream.range(0, count).mapToObj(side -> FoldCut.at(facet.fold(side), wall)).toList());
  }

  /** The front faces of all sheets together. */
  Polygon front() {
    return opened(FoldCut::front);
  }

  /** Their back faces. */
  Polygon back() {
    return opened(FoldCut::back);
  }

  /** What is cut square from sheets before edges are bevelled. */
  Polygon blank() {
    return opened(FoldCut::blank);
  }

  private Polygon opened(ToDoubleFunction<FoldCut> outward) {
    return new OpeningsAtSides(facet, side -> outward.applyAsDouble(sides.get(side))).opened();
  }

  /** The facet's boundary, every side moved outward by a distance of its own. */
  public Unturned moved(ToDoubleFunction<FoldCut> outward) {
    return Unturned.moved(facet.boundary(), side -> outward.applyAsDouble(sides.get(side)));
  }
}
