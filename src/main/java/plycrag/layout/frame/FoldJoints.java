package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.skin.FoldCut;
import plycrag.layout.skin.FoldCuts;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.Swing;
import plycrag.wall.Wall;

/** Where the timber of two facets meets across a fold. */
final class FoldJoints {
  private final Wall wall;
  private final FramedFacet frame;
  private final Fold fold;
  private final FramedFacet other;
  private final Fold back;

  /**
   * @param wall what both belong to
   * @param frame one of them
   * @param fold as that one has it
   * @param other the other one
   * @param back the fold as that one has it
   */
  private FoldJoints(Wall wall, FramedFacet frame, Fold fold, FramedFacet other, Fold back) {
    this.wall = wall;
    this.frame = frame;
    this.fold = fold;
    this.other = other;
    this.back = back;
  }

  /**
   * Every pair of members of two facets that lie beside each other over some length, fold by fold.
   */
  static List<Joint> between(Wall wall, FramedFacet frame, FramedFacet other) {
    List<Joint> joints = new ArrayList<>();
    for (Fold fold : frame.facet().folds()) {
      for (Fold back : other.facet().folds()) {
        if (fold.isSameAs(back, frame.facet().name(), other.facet().name())) {
          joints.addAll(new FoldJoints(wall, frame, fold, other, back).joints());
        }
      }
    }
    return joints;
  }

  private List<Joint> joints() {
    Optional<LineString> side = side(frame.facet(), fold);
    Optional<LineString> otherSide = side(other.facet(), back);
    return side.isPresent() && otherSide.isPresent()
        ? joints(side.get(), otherSide.get())
        : List.of();
  }

  private List<Joint> joints(LineString side, LineString otherSide) {
    List<Joint> joints = new ArrayList<>();
    for (Member under : frame.members()) {
      for (LineString edge : Contact.edgesOn(under, side)) {
        for (Member over : other.members()) {
          for (LineString otherEdge : Contact.edgesOn(over, otherSide)) {
            Span here = along(frame.facet(), edge);
            Span there = along(other.facet(), otherEdge);
            Span both =
                new Span(Math.max(here.low(), there.low()), Math.min(here.high(), there.high()));
            if (both.size() > Contact.LEAST) {
              joints.add(joint(under, over, edge, here, both));
            }
          }
        }
      }
    }
    return joints;
  }

  /** Whether the other facet turns on this one. */
  private boolean isHinge() {
    return fold.place() == Fold.Place.ABOVE
        && !frame.facet().standsOnFacet()
        && Swing.of(wall, List.of(frame.facet(), other.facet())).isPresent();
  }

  /** Where timber of a facet ends at a fold; nothing where it comes together before that. */
  private Optional<LineString> side(Facet facet, Fold at) {
    return FoldCuts.of(facet, wall).moved(FoldCut::timber).side(at.side());
  }

  /** Where an edge lies along the fold, mm from its beginning on the first facet. */
  private Span along(Facet facet, LineString edge) {
    LineString line = Shapes.outerEdges(frame.facet().boundary()).get(fold.side());
    Vector3 from = inRoom(frame.facet(), line.getCoordinateN(0));
    Vector3 way = inRoom(frame.facet(), line.getCoordinateN(1)).minus(from);
    double length = way.length();
    double one = inRoom(facet, edge.getCoordinateN(0)).minus(from).dot(way) / length;
    double two = inRoom(facet, edge.getCoordinateN(1)).minus(from).dot(way) / length;
    return new Span(Math.min(one, two), Math.max(one, two));
  }

  private static Vector3 inRoom(Facet facet, Coordinate place) {
    return facet.plane().toRoom(new Vector3(place.x, place.y, 0));
  }

  /** Its place is the middle of the shared stretch, in the middle of the first member. */
  private Joint joint(Member under, Member over, LineString edge, Span here, Span both) {
    Coordinate from = edge.getCoordinateN(0);
    Coordinate to = edge.getCoordinateN(1);
    double length = edge.getLength();
    double du = (to.x - from.x) / length;
    double dv = (to.y - from.y) / length;
    double into = both.middle() - here.low();
    double at = runs(edge) ? into : length - into;
    double half = under.breadth() / 2;
    boolean backToBack = FoldCut.at(Optional.of(fold), wall).ripsTimber();
    return new Joint(
        "",
        isHinge() ? Joint.Kind.HINGE : backToBack ? Joint.Kind.FOLD : Joint.Kind.FOLD_EDGES,
        under.mark(),
        over.mark(),
        Shapes.point(from.x + at * du - half * dv, from.y + at * dv + half * du),
        both.size());
  }

  /** Whether an edge runs the way in which the fold's places grow. */
  private boolean runs(LineString edge) {
    LineString line = Shapes.outerEdges(frame.facet().boundary()).get(fold.side());
    double along =
        (edge.getCoordinateN(1).x - edge.getCoordinateN(0).x)
                * (line.getCoordinateN(1).x - line.getCoordinateN(0).x)
            + (edge.getCoordinateN(1).y - edge.getCoordinateN(0).y)
                * (line.getCoordinateN(1).y - line.getCoordinateN(0).y);
    return along > 0;
  }
}
