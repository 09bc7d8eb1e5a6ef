package plycrag.solve.fixing;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/** A length of timber in the room. Its faces are found once, since many joints ask for them. */
public final class TimberBody {
  /** A face whose normal leans less than this toward the grain is a side, not an end. */
  private static final double LEAN = 0.1;

  private final String mark;
  private final Solid solid;
  private final Vector3 way;
  private final boolean sheeted;
  private final List<Vector3> corners;
  private final Vector3 middle;
  private final List<TimberFace> faces;
  private final List<TimberFace> sides;

  /**
   * A length of timber.
   *
   * @param mark its name
   * @param solid its body; where sheets lie on it, its near side is against them
   * @param way of its grain, of length one
   * @param sheeted whether sheets lie on it
   */
  public TimberBody(String mark, Solid solid, Vector3 way, boolean sheeted) {
    this.mark = mark;
    this.solid = solid;
    this.way = way;
    this.sheeted = sheeted;
    this.corners = Stream.concat(solid.near().stream(), solid.far().stream()).toList();
    this.middle = middle(corners);
    this.faces = faces(0).toList();
    this.sides =
        faces(sheeted ? 1 : 0).filter(face -> Math.abs(face.outward().dot(way)) < LEAN).toList();
  }

  /** Its name. */
  public String mark() {
    return mark;
  }

  /** Its body. */
  public Solid solid() {
    return solid;
  }

  Vector3 way() {
    return way;
  }

  /** Whether sheets lie on it. */
  public boolean sheeted() {
    return sheeted;
  }

  /** The sides along the grain that no sheet lies on. */
  List<TimberFace> sides() {
    return sides;
  }

  private Stream<TimberFace> faces(int skipped) {
    return solid
        .faces()
        .skip(skipped)
        .filter(face -> Tolerance.isSome(Solid.normal(face).length()))
        .map(
            face -> {
              Vector3 normal = Solid.normal(face).unit();
              boolean outward = normal.dot(face.get(0).minus(middle)) > 0;
              return new TimberFace(face, outward ? normal : normal.times(-1), way);
            });
  }

  private static Vector3 middle(List<Vector3> corners) {
    Vector3 sum = new Vector3(0, 0, 0);
    for (Vector3 corner : corners) {
      sum = sum.plus(corner);
    }
    return sum.times(1.0 / corners.size());
  }

  /** The way of its grain toward that end which is nearer to another's middle line. */
  Vector3 toward(TimberBody other) {
    Vector3 back = way.times(-1);
    return other.fromLine(end(way)) <= other.fromLine(end(back)) ? way : back;
  }

  /** The middle of that end which is nearer to another. */
  Vector3 endAt(TimberBody other) {
    return end(toward(other));
  }

  private Vector3 end(Vector3 outward) {
    return middle.plus(outward.times(half()));
  }

  /** Half its length. */
  private double half() {
    double along = middle.dot(way);
    return corners.stream().mapToDouble(corner -> corner.dot(way) - along).max().orElseThrow();
  }

  /** How far a place is from the line through its middle, from end to end, mm. */
  private double fromLine(Vector3 place) {
    double along = place.minus(middle).dot(way);
    double within = Math.max(-half(), Math.min(along, half()));
    return place.minus(middle.plus(way.times(within))).length();
  }

  /** From the side that its sheets lie on to the other, of length one. */
  Vector3 away() {
    Vector3 near = Solid.normal(solid.near());
    Vector3 across = solid.far().get(0).minus(solid.near().get(0));
    return (near.dot(across) < 0 ? near.times(-1) : near).unit();
  }

  /** How much timber a straight way through it from a place on its surface meets, mm. */
  public double through(Vector3 from, Vector3 inward) {
    double through = Double.POSITIVE_INFINITY;
    for (TimberFace face : faces) {
      double facing = face.outward().dot(inward);
      if (Tolerance.isSome(facing)) {
        through = Math.min(through, (face.distance() - face.outward().dot(from)) / facing);
      }
    }
    return Double.isInfinite(through) ? 0 : through;
  }

  /** The smallest box around it, seen along the room's y. */
  public Envelope box() {
    return solid.elevation();
  }
}
