package plycrag.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Offsets;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;

/**
 * One plane of the climbing face.
 *
 * @param name printed before every mark on it
 * @param angle from vertical, degrees; positive leans out over the climber
 * @param boundary its edge in (u, v) without regard to cutouts; its lowest and its leftmost place
 *     have v and u of 0
 * @param cutouts openings in it
 * @param folds where it meets others
 * @param plane where it stands in the room
 * @param told how long it was told to be, before walls beside it cut it short
 */
public record Facet(
    String name,
    double angle,
    Polygon boundary,
    List<Cutout> cutouts,
    List<Fold> folds,
    FacetPlane plane,
    ToldLength told) {

  /** What leans further is level, degrees. */
  private static final double ROOF = 90;

  /** Copies the lists. */
  public Facet {
    cutouts = List.copyOf(cutouts);
    folds = List.copyOf(folds);
  }

  /** The climbing face in (u, v), the cutouts taken out. */
  public Polygon outline() {
    return opened(boundary);
  }

  /**
   * What is left of an area without the cutouts, the largest part of it; all of it if nothing is
   * left, which a rule forbids.
   */
  public Polygon opened(Polygon area) {
    Geometry rest = area;
    for (Cutout cutout : cutouts) {
      rest = Shapes.without(rest, cutout.shape());
    }
    return cutouts.isEmpty() || Shapes.areas(rest).isEmpty() ? area : Shapes.largest(rest);
  }

  /** The parts of the face where a hole's centre may lie, from below. */
  public List<Polygon> setback(double setback) {
    return Offsets.narrowed(outline(), setback);
  }

  /** Across, mm. */
  public double width() {
    return box().getWidth();
  }

  /** Up the slope, mm. */
  public double length() {
    return box().getHeight();
  }

  /** The key that tells how long it is, with its table. */
  public String lengthKey() {
    return "[[facet]] " + told.key().word();
  }

  /** The keys that tell how large it is, with their table. */
  public String sizeKeys() {
    return told.key() == ToldLength.Key.OUTLINE
        ? lengthKey()
        : "[[facet]] width, " + told.key().word();
  }

  /** Whether walls beside it are known to leave less of it than was told. */
  public boolean isCutOff() {
    boolean isOutline = told.key() == ToldLength.Key.OUTLINE;
    return length() < told.length() - Tolerance.TOUCH || (!isOutline && !isRectangle());
  }

  private Envelope box() {
    return boundary.getEnvelopeInternal();
  }

  /** Whether it is a rectangle. */
  public boolean isRectangle() {
    return boundary.isRectangle();
  }

  /** The folds on one of its sides, from below: several where what is beside it turns. */
  public List<Fold> folds(Fold.Place place) {
    return folds.stream().filter(fold -> fold.place() == place).toList();
  }

  /** Whether a fold lies level: above, below, or where one facet is a roof. */
  public boolean isLevel(Fold fold) {
    LineString side = Shapes.outerEdges(boundary).get(fold.side());
    return angle >= ROOF || Direction.of(side).equals(Direction.LEVEL);
  }

  /** The first fold on one of its sides, if there is one. */
  public Optional<Fold> fold(Fold.Place place) {
    return folds.stream().filter(fold -> fold.place() == place).findFirst();
  }

  /** The fold that a side of the boundary lies on, if there is one. */
  public Optional<Fold> fold(int side) {
    return folds.stream().filter(fold -> fold.side() == side).findFirst();
  }

  /**
   * Things of facets, those that stand on each other together, from left to right.
   *
   * @param things run by run from the floor up
   * @param facet whose each of them is
   */
  public static <T> List<List<T>> runs(List<T> things, Function<T, Facet> facet) {
    List<List<T>> runs = new ArrayList<>();
    for (T thing : things) {
      if (!facet.apply(thing).standsOnFacet()) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(thing);
    }
    return runs;
  }

  /** Whether it stands on another facet. */
  public boolean standsOnFacet() {
    return fold(Fold.Place.BELOW).isPresent();
  }

  /** Height of the face's lower edge above the floor, mm. */
  public double raise() {
    return plane.raise();
  }

  /** Height of the face's upper edge above the floor, mm. */
  public double overallHeight() {
    return plane.z(length(), 0);
  }

  /** Whether it is out of plumb. */
  public boolean leans() {
    return angle != 0;
  }
}
