package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Hulls;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.PlacedMember;

/**
 * Timber of a support as a section sees it: one of each station's, and what is alike elsewhere.
 *
 * @param role what it is for
 * @param profile y of its run to the right, height up
 * @param marks of all that look so
 */
record StationTimber(MemberRole role, Polygon profile, List<String> marks) {
  /** Copies the marks. */
  StationTimber {
    marks = List.copyOf(marks);
  }

  /**
   * What a run's section shows of its support, but for what slants across the stations.
   *
   * @param run the run's number, from 0
   */
  static List<StationTimber> of(Layout layout, int run) {
    FloorAxes axes = layout.runs().get(run).get(0).facet().plane().floorAxes();
    List<StationTimber> all = new ArrayList<>();
    for (PlacedMember placed : layout.standing()) {
      Solid body = placed.body().mapped(axes::fromRoom);
      if (placed.run() == run && !isAcross(placed, body)) {
        add(placed, profile(body), all);
      }
    }
    return all;
  }

  private static void add(PlacedMember placed, Polygon profile, List<StationTimber> all) {
    List<String> marks = new ArrayList<>();
    MemberRole role = placed.member().role();
    StationTimber found = null;
    for (StationTimber one : all) {
      found = one.role == role && one.profile.equalsExact(profile, Tolerance.TOUCH) ? one : found;
    }
    if (found != null) {
      marks.addAll(found.marks);
    }
    marks.add(placed.member().mark());
    StationTimber timber = new StationTimber(role, profile, marks);
    if (found == null) {
      all.add(timber);
    } else {
      all.set(all.indexOf(found), timber);
    }
  }

  /** A body in its run's axes from the left. */
  private static Polygon profile(Solid body) {
    List<Coordinate> corners = new ArrayList<>();
    corners(body).forEach(corner -> corners.add(new Coordinate(corner.y(), corner.z())));
    return Hulls.around(corners);
  }

  private static Stream<Vector3> corners(Solid body) {
    return Stream.concat(body.near().stream(), body.far().stream());
  }

  /** Whether it slants from station to station, so that a section sees nothing of its slant. */
  static boolean isAcross(PlacedMember placed, Solid inRun) {
    double low = corners(inRun).mapToDouble(Vector3::x).min().orElse(0);
    double high = corners(inRun).mapToDouble(Vector3::x).max().orElse(0);
    MemberRole role = placed.member().role();
    boolean slants = role == MemberRole.BRACE || role == MemberRole.KNEE;
    return slants && high - low > placed.member().depth() + Tolerance.TOUCH;
  }

  /** Its marks in few words: {@code PO1 to PO4}. */
  String words() {
    String first = marks.get(0);
    String last = marks.get(marks.size() - 1);
    return switch (marks.size()) {
      case 1 -> first;
      case 2 -> first + ", " + last;
      default -> first + " to " + last;
    };
  }
}
