package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.wall.FacetAtAngle;

/**
 * The places where climbers load a wall most. Of each upright's inserts, those nearer to no other
 * upright: the highest, the lowest, and those nearest to the middle and to the ends of each of its
 * pieces that is long; and the upper corners of each facet, at the edge of the sheet.
 *
 * <p>Between them nothing is greater: along a piece the moment of a load that moves is greatest in
 * the middle or at an end.
 */
public final class ClimberPlaces {
  /** A piece that is shorter has no middle of its own, mm. */
  private static final double LONG = 600;

  private final Layout layout;
  private final StructureModel model;
  private final MemberAxes axes;
  private final double reach;
  private final List<ClimberPlace> all = new ArrayList<>();

  private ClimberPlaces(Layout layout, StructureModel model, double angle, double reach) {
    this.layout = layout;
    this.model = model;
    this.axes = new MemberAxes(layout, angle);
    this.reach = reach;
  }

  /**
   * Facet by facet, upright by upright, from below.
   *
   * @param angle of a facet that is hinged, degrees
   * @param reach how far the tip of a hold stands off the face, mm
   */
  public static List<ClimberPlace> of(
      Layout layout, StructureModel model, double angle, double reach) {
    ClimberPlaces places = new ClimberPlaces(layout, model, angle, reach);
    layout.facets().forEach(places::add);
    return places.all;
  }

  /**
   * The corners of all facets as they are laid out, on no stud.
   *
   * @param reach how far the tip of a hold stands off the face, mm
   */
  public static List<ClimberPlace> corners(Layout layout, double reach) {
    List<ClimberPlace> places = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      FacetPlane plane = facet.facet().plane();
      Vector3 right = plane.toRoom(new Vector3(1, 0, 0)).minus(plane.toRoom(new Vector3(0, 0, 0)));
      for (Coordinate corner : facet.facet().boundary().getCoordinates()) {
        Vector3 tip = plane.toRoom(new Vector3(corner.x, corner.y, -reach));
        String name = "a corner of " + facet.facet().name();
        places.add(new ClimberPlace(name, "", "", 0, tip, tip, level(plane.normal()), right));
      }
    }
    return places;
  }

  /** A place on the face with its name. */
  private record Spot(String name, double u, double v) {}

  private void add(FacetLayout facet) {
    List<MemberLine> uprights =
        model.members().stream()
            .filter(one -> one.axis().facet().equals(facet.facet().name()))
            .filter(one -> one.axis().role().isUpright() && one.isHeld())
            .toList();
    if (uprights.isEmpty()) {
      return;
    }
    Map<MemberLine, List<Spot>> spots = new LinkedHashMap<>();
    uprights.forEach(one -> spots.put(one, new ArrayList<>()));
    Stream.concat(inserts(facet), corners(facet))
        .forEach(spot -> nearest(facet, uprights, spot).forEach(one -> spots.get(one).add(spot)));
    spots.forEach(
        (upright, its) -> chosen(facet, upright, its).forEach(spot -> add(facet, upright, spot)));
  }

  /** Their marks begin with the facet's name. */
  private static Stream<Spot> inserts(FacetLayout facet) {
    return Stream.concat(
        facet.inserts().stream().map(one -> spot(one.mark(), one.centre())),
        facet.screwPoints().stream().map(one -> spot(one.mark(), one.centre())));
  }

  private static Spot spot(String mark, Point centre) {
    return new Spot(mark, centre.getX(), centre.getY());
  }

  private static Stream<Spot> corners(FacetLayout facet) {
    Envelope box = facet.facet().boundary().getEnvelopeInternal();
    String name = facet.facet().name();
    return Stream.of(
        new Spot("the left upper corner of " + name, box.getMinX(), box.getMaxY()),
        new Spot("the right upper corner of " + name, box.getMaxX(), box.getMaxY()));
  }

  /** The nearest upright; both where a place lies half way between two. */
  private List<MemberLine> nearest(FacetLayout facet, List<MemberLine> uprights, Spot spot) {
    double least =
        uprights.stream().mapToDouble(one -> aside(facet, one, spot)).min().orElseThrow();
    return uprights.stream()
        .filter(one -> Tolerance.atMost(aside(facet, one, spot), least + AS_NEAR))
        .toList();
  }

  /** What is no further than this from being nearest is as near, mm. */
  private static final double AS_NEAR = 2;

  private double aside(FacetLayout facet, MemberLine upright, Spot spot) {
    Vector3 place = place(facet, spot.u(), spot.v(), behind());
    return upright.axis().distance(place);
  }

  private double behind() {
    return layout.wall().sheet().thickness() + layout.wall().frame().depth() / 2;
  }

  private Vector3 place(FacetLayout facet, double u, double v, double w) {
    return axes.facet(facet.facet()).at(new Vector3(u, v, w));
  }

  private List<Spot> chosen(FacetLayout facet, MemberLine upright, List<Spot> spots) {
    List<Double> wanted = new ArrayList<>(List.of(upright.from(), upright.to()));
    for (MemberLine.Piece piece : upright.pieces()) {
      if (piece.to() - piece.from() > LONG) {
        wanted.add((piece.from() + piece.to()) / 2);
      }
      wanted.add(piece.to());
    }
    List<Spot> chosen = new ArrayList<>();
    for (double along : wanted) {
      spots.stream()
          .min(Comparator.comparingDouble(spot -> Math.abs(along(facet, upright, spot) - along)))
          .filter(spot -> !chosen.contains(spot))
          .ifPresent(chosen::add);
    }
    chosen.sort(Comparator.comparingDouble(Spot::v));
    return chosen;
  }

  private double along(FacetLayout facet, MemberLine upright, Spot spot) {
    return upright.axis().foot(place(facet, spot.u(), spot.v(), behind()));
  }

  private void add(FacetLayout facet, MemberLine upright, Spot spot) {
    double along = Math.max(upright.from(), Math.min(upright.to(), along(facet, upright, spot)));
    MemberLine.Piece piece = upright.at(along);
    FacetAtAngle turned = axes.facet(facet.facet());
    Vector3 line = upright.axis().at(along);
    Vector3 onFace = turned.at(new Vector3(0, 0, 0));
    Vector3 out = turned.at(new Vector3(0, 0, -1)).minus(onFace);
    Vector3 right = turned.at(new Vector3(1, 0, 0)).minus(onFace);
    // the load is wholly on this stud: at its own line, as high as the hold
    Vector3 tip = place(facet, spot.u(), spot.v(), -reach);
    Vector3 inPlane = tip.minus(right.times(tip.minus(line).dot(right)));
    all.add(
        new ClimberPlace(
            spot.name(),
            upright.axis().mark(),
            piece.beam(),
            along - piece.from(),
            line,
            inPlane,
            level(out),
            right));
  }

  /** A way off the face that neither lifts nor presses; off a level face, as it is. */
  private static Vector3 level(Vector3 out) {
    Vector3 level = new Vector3(out.x(), out.y(), 0);
    return level.length() > 0 ? level.unit() : out;
  }
}
