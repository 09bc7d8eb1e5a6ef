package plycrag.wall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.wall.Fold.Place;

/**
 * The image of a wall in a mirror that stands upright and square to its first wall's face, through
 * the middle of that: what was on the left is on the right, each as far from the other end. The
 * first wall's axes stay those of the room.
 */
public final class MirroredWall {
  private final Wall drawn;
  private final double width;
  private final Map<String, Double> widths;

  private MirroredWall(Wall drawn) {
    this.drawn = drawn;
    this.width = drawn.frontWidth();
    this.widths = drawn.facets().stream().collect(Collectors.toMap(Facet::name, Facet::width));
  }

  /** The image of a wall; the image of that is the wall again. */
  public static Wall of(Wall drawn) {
    return new MirroredWall(drawn).image();
  }

  private Wall image() {
    Wall.Face face = drawn.face();
    Wall.Surroundings surroundings = drawn.surroundings();
    return new Wall(
        drawn.name(),
        new Wall.Face(
            facets(),
            face.foldEdges(),
            face.inserts(),
            face.zones().stream().map(this::zone).toList(),
            face.positions().stream().map(this::position).toList(),
            !face.mirrored()),
        new Wall.Sheeting(
            drawn.sheet().mirrored(), drawn.sheeting().screws(), drawn.sheeting().clearance()),
        drawn.framework(),
        drawn.workshop(),
        new Wall.Surroundings(
            surroundings.behind(),
            surroundings.supports(),
            surroundings.room().mirrored(width),
            surroundings.structure()));
  }

  /** Run by run from what is the left now. */
  private List<Facet> facets() {
    List<List<Facet>> runs = new ArrayList<>(Facet.runs(drawn.facets(), Function.identity()));
    Collections.reverse(runs);
    return runs.stream()
        .flatMap(
            run -> {
              double about =
                  run.get(0).plane().floorAxes().equals(FloorAxes.FIRST)
                      ? width
                      : 2 * run.get(0).plane().left() + run.get(0).width();
              return run.stream().map(facet -> facet(facet, about));
            })
        .toList();
  }

  /**
   * The image of a facet.
   *
   * @param about the sum of a place of its run and of its image, x of the run, mm
   */
  private Facet facet(Facet facet, double about) {
    double across = facet.width();
    FacetPlane plane = facet.plane();
    FacetPlane image =
        new FacetPlane(
            plane.angle(),
            about - plane.left() - across,
            plane.out(),
            plane.raise(),
            axes(plane.floorAxes(), about));
    Polygon boundary = Shapes.mirrored(facet.boundary(), across);
    List<LineString> sides = Shapes.outerEdges(facet.boundary());
    List<LineString> images = Shapes.outerEdges(boundary);
    return new Facet(
        facet.name(),
        facet.angle(),
        boundary,
        facet.cutouts().stream()
            .map(
                cutout ->
                    new Cutout(
                        cutout.name(), Shapes.mirrored(cutout.shape(), across), cutout.filled()))
            .toList(),
        facet.folds().stream()
            .map(fold -> fold(fold, number(sides.get(fold.side()), images, across)))
            .toList(),
        image,
        facet.told());
  }

  /** The number of the side that is the image of another. */
  private static int number(LineString side, List<LineString> images, double across) {
    return IntStream.range(0, images.size())
        .filter(at -> isImage(side.getStartPoint(), images.get(at).getEndPoint(), across))
        .filter(at -> isImage(side.getEndPoint(), images.get(at).getStartPoint(), across))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isImage(Point place, Point image, double across) {
    return Math.abs(across - place.getX() - image.getX()) < Tolerance.OFF_GRID
        && Math.abs(place.getY() - image.getY()) < Tolerance.OFF_GRID;
  }

  private static Fold fold(Fold fold, int side) {
    Place place =
        switch (fold.place()) {
          case LEFT -> Place.RIGHT;
          case RIGHT -> Place.LEFT;
          case ABOVE, BELOW -> fold.place();
        };
    return new Fold(side, fold.turn(), fold.other(), place, fold.length());
  }

  /** Where the image of a run stands: it begins where the run ended. */
  private FloorAxes axes(FloorAxes axes, double about) {
    if (axes.equals(FloorAxes.FIRST)) {
      return axes;
    }
    Vector3 end = axes.toRoom(new Vector3(about, 0, 0));
    return new FloorAxes(width - end.x(), end.y(), 0 - axes.heading());
  }

  private Zone zone(Zone zone) {
    Optional<Double> across = Optional.ofNullable(widths.get(zone.facet()));
    return new Zone(
        zone.facet(),
        zone.name(),
        Shapes.mirrored(zone.shape(), across.orElseThrow()),
        zone.points(),
        zone.pattern());
  }

  private InsertPosition position(InsertPosition position) {
    return new InsertPosition(
        position.facet(), widths.get(position.facet()) - position.u(), position.v());
  }
}
