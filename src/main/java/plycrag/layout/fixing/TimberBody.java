package plycrag.layout.fixing;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Place;
import plycrag.geometry.Solid;

/**
 * A length of timber in the room.
 *
 * @param mark its name
 * @param solid its body; where sheets lie on it, its near side is against them
 * @param way of its grain, of length one
 * @param sheeted whether sheets lie on it
 */
public record TimberBody(String mark, Solid solid, Place way, boolean sheeted) {
  /** A face whose normal leans less than this toward the grain is a side, not an end. */
  private static final double LEAN = 0.1;

  private static final double NOTHING = 1e-6;

  /** The sides along the grain that no sheet lies on. */
  List<TimberFace> sides() {
    return faces(sheeted ? 1 : 0).filter(face -> Math.abs(face.outward().dot(way)) < LEAN).toList();
  }

  private Stream<TimberFace> faces(int skipped) {
    Place middle = middle();
    return solid
        .faces()
        .skip(skipped)
        .filter(corners -> Solid.normal(corners).length() > NOTHING)
        .map(
            corners -> {
              Place normal = Solid.normal(corners).unit();
              boolean outward = normal.dot(corners.get(0).minus(middle)) > 0;
              return new TimberFace(corners, outward ? normal : normal.times(-1), way);
            });
  }

  private Place middle() {
    Place sum = new Place(0, 0, 0);
    for (Place corner : corners()) {
      sum = sum.plus(corner);
    }
    return sum.times(1.0 / corners().size());
  }

  /** The way of its grain toward that end which is nearer to another's middle line. */
  Place toward(TimberBody other) {
    Place back = way.times(-1);
    return other.fromLine(end(way)) <= other.fromLine(end(back)) ? way : back;
  }

  /** The middle of that end which is nearer to another. */
  Place endAt(TimberBody other) {
    return end(toward(other));
  }

  private Place end(Place outward) {
    return middle().plus(outward.times(half()));
  }

  /** Half its length. */
  private double half() {
    double middle = middle().dot(way);
    return corners().stream().mapToDouble(corner -> corner.dot(way) - middle).max().orElseThrow();
  }

  /** How far a place is from the line through its middle, from end to end, mm. */
  private double fromLine(Place place) {
    double along = place.minus(middle()).dot(way);
    double within = Math.max(-half(), Math.min(along, half()));
    return place.minus(middle().plus(way.times(within))).length();
  }

  List<Place> corners() {
    return Stream.concat(solid.near().stream(), solid.far().stream()).toList();
  }

  /** From the side that its sheets lie on to the other, of length one. */
  Place away() {
    Place near = Solid.normal(solid.near());
    Place across = solid.far().get(0).minus(solid.near().get(0));
    return (near.dot(across) < 0 ? near.times(-1) : near).unit();
  }

  /** How much timber a straight way through it from a place on its surface meets, mm. */
  double through(Place from, Place inward) {
    return faces(0)
        .filter(face -> face.outward().dot(inward) > NOTHING)
        .mapToDouble(
            face -> (face.distance() - face.outward().dot(from)) / face.outward().dot(inward))
        .min()
        .orElse(0);
  }

  /** The smallest box around it, seen along the room's y. */
  public Envelope box() {
    Envelope box = new Envelope();
    corners().forEach(corner -> box.expandToInclude(corner.x(), corner.z()));
    return box;
  }
}
