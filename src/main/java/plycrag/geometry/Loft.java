package plycrag.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * Joins two faces whose corners need not match, such as the front and the back of a sheet that is
 * bevelled at more planes than its front has sides. Of all ways round that join every corner of one
 * to a neighbouring corner of the other, the one whose joints are shortest together: from the
 * closest pair on, by dynamic programming (as for strips between contours: Fuchs, Kedem and
 * Uselton, 1977).
 */
final class Loft {
  private final List<Coordinate> near;
  private final List<Coordinate> far;
  private final double[][] shortest;

  private Loft(List<Coordinate> near, List<Coordinate> far) {
    this.near = near;
    this.far = far;
    this.shortest = new double[near.size() + 1][far.size() + 1];
  }

  /** The body between two faces at depths of their own; a corner joined to several repeats. */
  static Solid between(Polygon near, double from, Polygon far, double to) {
    Loft loft = new Loft(corners(near), corners(far));
    loft.beginAtClosest();
    List<Vector3> nearPlaces = new ArrayList<>();
    List<Vector3> farPlaces = new ArrayList<>();
    for (Joint joint : loft.joints()) {
      nearPlaces.add(place(loft.nearAt(joint.near), from));
      farPlaces.add(place(loft.farAt(joint.far), to));
    }
    return new Solid(nearPlaces, farPlaces);
  }

  /** The numbers of two corners that are joined. */
  private record Joint(int near, int far) {}

  private static List<Coordinate> corners(Polygon outline) {
    List<Coordinate> ring = new ArrayList<>(List.of(outline.getExteriorRing().getCoordinates()));
    ring.remove(ring.size() - 1);
    return ring;
  }

  private static Vector3 place(Coordinate at, double w) {
    return new Vector3(at.x, at.y, w);
  }

  private Coordinate nearAt(int number) {
    return near.get(number % near.size());
  }

  private Coordinate farAt(int number) {
    return far.get(number % far.size());
  }

  private void beginAtClosest() {
    Joint closest = new Joint(0, 0);
    for (int one = 0; one < near.size(); one++) {
      for (int other = 0; other < far.size(); other++) {
        if (apart(one, other) < apart(closest.near, closest.far)) {
          closest = new Joint(one, other);
        }
      }
    }
    Collections.rotate(near, -closest.near);
    Collections.rotate(far, -closest.far);
  }

  private double apart(int one, int other) {
    return nearAt(one).distance(farAt(other));
  }

  /** The joints once round, the first not repeated. */
  private List<Joint> joints() {
    for (int one = 0; one <= near.size(); one++) {
      for (int other = 0; other <= far.size(); other++) {
        Joint here = new Joint(one, other);
        shortest[one][other] = apart(one, other) + (isFirst(here) ? 0 : reached(before(here)));
      }
    }
    List<Joint> joints = new ArrayList<>();
    Joint last = new Joint(near.size(), far.size());
    while (!isFirst(last)) {
      last = before(last);
      joints.add(last);
    }
    Collections.reverse(joints);
    return joints;
  }

  private static boolean isFirst(Joint joint) {
    return joint.near == 0 && joint.far == 0;
  }

  /** The best of the joints that may come before one: both faces a corner back, or one of them. */
  private Joint before(Joint joint) {
    Joint best = new Joint(joint.near - 1, joint.far - 1);
    for (Joint other :
        List.of(new Joint(joint.near - 1, joint.far), new Joint(joint.near, joint.far - 1))) {
      best = reached(other) < reached(best) ? other : best;
    }
    return best;
  }

  private double reached(Joint joint) {
    return joint.near < 0 || joint.far < 0
        ? Double.POSITIVE_INFINITY
        : shortest[joint.near][joint.far];
  }
}
