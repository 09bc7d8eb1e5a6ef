package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.geometry.Vector3;

/**
 * A member under a gusset: the face that the gusset lies on, and where screws may go into it.
 *
 * <p>Its own axes run with the grain and across it, from the place around which all members meet.
 *
 * @param body the member
 * @param side of it on which the gusset lies
 * @param face as it lies flat in its own axes
 * @param free of it what screws may go into
 * @param axes its own
 * @param forces the ways in which screws pull it when members draw apart, of length one; what
 *     pushes goes from timber to timber
 * @param behind how deep the screws of the sheets end behind these, mm
 */
record GussetTimber(
    TimberBody body,
    TimberFace side,
    FlatFace face,
    FlatFace free,
    FlatAxes axes,
    List<Vector3> forces,
    double behind) {
  /** From an edge of plywood (EN 1995-1-1, 8.3.1.3, from memory), in diameters. */
  private static final double UNLOADED_EDGE = 3;

  private static final double LOADED_MORE = 4;

  /** What 8.3.1.3 of EN 1995-1-1 makes of the distances between screws through a panel. */
  static final double PANEL_ON_TIMBER = 0.85;

  private static final int MOST_ROWS = 2;

  /** Faces whose normals are further from square than this are no sides of a sheeted member. */
  private static final double SQUARE = 0.1;

  static GussetTimber of(
      TimberBody body, TimberFace face, Vector3 origin, List<MemberPair> meets, double behind) {
    Vector3 across = face.outward().cross(body.way()).unit();
    List<Vector3> forces =
        meets.stream()
            .filter(meet -> meet.first().equals(body) || meet.second().equals(body))
            .map(meet -> meet.pullOn(body))
            .toList();
    boolean besideSheets = body.sheeted() && Math.abs(face.outward().dot(body.away())) < SQUARE;
    FlatFace flat = face.flat(origin, body.way(), across);
    return new GussetTimber(
        body,
        face,
        flat,
        flat,
        new FlatAxes(origin, body.way(), across),
        forces,
        besideSheets ? behind : 0);
  }

  /** The same where screws go in from this side and the opposite one. */
  GussetTimber withBoth(TimberFace opposite) {
    FlatFace other = opposite.flat(axes.origin(), axes.along(), axes.across());
    return new GussetTimber(body, side, face, other.kept(face, 0, 0), axes, forces, behind);
  }

  /**
   * Ways to set out screws near the origin, in one row and in two; none where they find no room.
   *
   * @param diameter of the screws, mm
   * @param count of them
   * @param play by which each may still be moved, mm
   */
  List<List<Vector3>> choices(double diameter, int count, double play) {
    return choices(diameter, count, play, List.of(0.0));
  }

  /**
   * The same, from the origin to one side as well.
   *
   * @param shifts how far from the middle of a row the origin lies, in half rows
   */
  List<List<Vector3>> choices(double diameter, int count, double play, List<Double> shifts) {
    double sine = most(axes.across());
    double cosine = most(axes.along());
    ScrewDistances distances = new ScrewDistances(diameter, true);
    FlatFace kept = free.kept(free, outward -> off(outward, cosine, distances) + play);
    FlatFace room = behind > 0 ? kept.where(spot -> depth(spot) - behind - diameter) : kept;
    double pitch = PANEL_ON_TIMBER * distances.alongGrain(cosine) + 2 * play;
    double gauge = PANEL_ON_TIMBER * distances.acrossGrain(sine) + 2 * play;
    List<List<Vector3>> choices = new ArrayList<>();
    for (int rows = 1; rows <= MOST_ROWS && !room.isNothing(); rows++) {
      for (double shift : shifts) {
        List<Vector3> screws = rows(room, rows, (count + rows - 1) / rows, pitch, gauge, shift);
        if (!screws.isEmpty() && !choices.contains(screws)) {
          choices.add(screws);
        }
      }
    }
    return choices;
  }

  /** From an edge of its face: the more, the more a force across the grain points at it. */
  private double off(FacePlace outward, double cosine, ScrewDistances distances) {
    double pulled =
        forces.stream()
            .mapToDouble(force -> Math.signum(outward.across()) * force.dot(axes.across()))
            .max()
            .orElseThrow();
    double side = distances.loadedEdge(Math.max(0, Math.min(1, pulled)));
    return Math.max(
        distances.loadedEnd(cosine) * Math.abs(outward.along()), side * Math.abs(outward.across()));
  }

  /** The greatest part of what it hands on or takes that runs along a way. */
  private double most(Vector3 way) {
    return forces.stream()
        .mapToDouble(force -> Math.min(1, Math.abs(force.dot(way))))
        .max()
        .orElseThrow();
  }

  /** How far from an edge of the plywood that lies across a way its screws stay, in diameters. */
  double plywoodEdge(Vector3 way) {
    return UNLOADED_EDGE + LOADED_MORE * most(way);
  }

  /** How far behind the sheets a place lies. */
  private double depth(FacePlace spot) {
    return axes.place(spot).minus(body.solid().near().get(0)).dot(body.away());
  }

  private List<Vector3> rows(
      FlatFace free, int rows, int inRow, double pitch, double gauge, double shift) {
    double middle = (free.least(FacePlace::across) + free.most(FacePlace::across)) / 2;
    List<Vector3> screws = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      double line = middle + (row - (rows - 1) / 2.0) * gauge;
      FlatFace stretch = free.onLine(line);
      double room = stretch.corners().isEmpty() ? -1 : length(stretch) - (inRow - 1) * pitch;
      if (room < 0) {
        return List.of();
      }
      double low = stretch.least(FacePlace::along);
      double wished = (shift - 1) * (inRow - 1) * pitch / 2;
      double first = Math.max(low, Math.min(wished, low + room));
      IntStream.range(0, inRow)
          .mapToObj(at -> axes.place(new FacePlace(first + at * pitch, line)))
          .forEach(screws::add);
    }
    return screws;
  }

  private static double length(FlatFace stretch) {
    return stretch.most(FacePlace::along) - stretch.least(FacePlace::along);
  }

  /** The corners of its face in other axes on the same plane. */
  Stream<FacePlace> seen(FlatAxes other) {
    return face.corners().stream().map(axes::place).map(other::spot);
  }
}
