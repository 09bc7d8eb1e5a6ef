package plycrag.solve.support;

import java.util.List;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;

/**
 * A slanting timber in section: from the corner between an upright face and something level under
 * it, up to the corner between the back of the frame and something level above it.
 *
 * @param corners of its side, from the lower end round
 * @param direction the way it runs
 * @param endsOnPost whether its lower end lies on the upright face and not on what is level
 * @param lowEnd the middle of its lower end
 * @param lowLength of that end, mm
 * @param highEnd the middle of its upper end
 * @param highLength of that end, mm
 */
record Diagonal(
    List<SectionPlace> corners,
    Direction direction,
    boolean endsOnPost,
    SectionPlace lowEnd,
    double lowLength,
    SectionPlace highEnd,
    double highLength) {
  /** Turns of a search that comes a hundred times nearer with some of them. */
  private static final int TURNS = 200;

  /** Steeper than one in one it stands on what is level. */
  private static final double STEEP = 1;

  /**
   * The timber.
   *
   * @param low the lower corner
   * @param high the upper corner
   * @param depth of the timber in the section, mm
   */
  static Diagonal between(SectionPlace low, SectionPlace high, double depth) {
    double rise = high.z() - low.z();
    boolean steep = rise > STEEP * (high.y() - low.y());
    return steep ? steep(low, high, depth) : flat(low, high, depth);
  }

  /** Both ends are cut level: a parallelogram whose level sides grow as it leans more. */
  private static Diagonal steep(SectionPlace low, SectionPlace high, double depth) {
    double rise = high.z() - low.z();
    double wide = depth;
    for (int turn = 0; turn < TURNS; turn++) {
      double run = high.y() - low.y() - wide;
      wide = depth * Math.sqrt(run * run + rise * rise) / rise;
    }
    double left = high.y() - wide;
    List<SectionPlace> corners =
        List.of(
            low, new SectionPlace(low.y() + wide, low.z()), high, new SectionPlace(left, high.z()));
    return new Diagonal(
        corners,
        Direction.of(Shapes.line(low.y(), low.z(), left, high.z())),
        false,
        new SectionPlace(low.y() + wide / 2, low.z()),
        wide,
        new SectionPlace(high.y() - wide / 2, high.z()),
        wide);
  }

  /** A timber across upright ones, flat on them; both ends are cut upright. */
  static Diagonal withUprightEnds(SectionPlace low, SectionPlace high, double depth) {
    Diagonal mirrored = steep(mirrored(low), mirrored(high), depth);
    List<SectionPlace> corners = mirrored.corners().stream().map(Diagonal::mirrored).toList();
    List<SectionPlace> round =
        List.of(corners.get(0), corners.get(3), corners.get(2), corners.get(1));
    return new Diagonal(
        round,
        Direction.of(Shapes.line(low.y(), low.z(), round.get(1).y(), round.get(1).z())),
        true,
        mirrored(mirrored.lowEnd()),
        mirrored.lowLength(),
        mirrored(mirrored.highEnd()),
        mirrored.highLength());
  }

  /** The least reach of a knee brace whose ends leave something of its length between them, mm. */
  static double shortestKnee(double depth) {
    return 2 * depth * Math.sqrt(2);
  }

  /**
   * A timber at 45°, its lower end upright on a face, its upper one level.
   *
   * @param low its lower corner
   * @param reach how far up and along it goes, mm
   */
  static Diagonal knee(SectionPlace low, double reach, SupportSite site) {
    return flat(low, new SectionPlace(low.y() + reach, low.z() + reach), site.timber().brace());
  }

  /**
   * A timber that props an upright face from behind: its upper end lies on that, its lower one
   * level on what is below.
   *
   * @param top the upper corner, on the face
   * @param run how far behind the face it reaches, mm
   * @param rise from its lower end to that corner, mm
   */
  static Diagonal prop(SectionPlace top, double run, double rise, double depth) {
    Diagonal hung = flat(new SectionPlace(0, 0), new SectionPlace(run, rise), depth);
    double onPost = hung.lowLength();
    double onLevel = hung.highLength();
    return new Diagonal(
        hung.corners().stream().map(corner -> halfTurned(corner, top)).toList(),
        hung.direction(),
        false,
        halfTurned(hung.highEnd(), top),
        onLevel,
        halfTurned(hung.lowEnd(), top),
        onPost);
  }

  private static SectionPlace halfTurned(SectionPlace place, SectionPlace zero) {
    return new SectionPlace(zero.y() - place.y(), zero.z() - place.z());
  }

  /** The same turned over about an upright line. */
  Diagonal mirroredAt(double middle) {
    List<SectionPlace> over =
        corners.stream()
            .map(corner -> new SectionPlace(2 * middle - corner.y(), corner.z()))
            .toList();
    List<SectionPlace> round = List.of(over.get(0), over.get(3), over.get(2), over.get(1));
    return new Diagonal(
        round,
        new Direction(-direction.u(), direction.v()),
        endsOnPost,
        new SectionPlace(2 * middle - lowEnd.y(), lowEnd.z()),
        lowLength,
        new SectionPlace(2 * middle - highEnd.y(), highEnd.z()),
        highLength);
  }

  private static SectionPlace mirrored(SectionPlace place) {
    return new SectionPlace(place.z(), place.y());
  }

  /** The lower end is cut upright, the upper one level. */
  private static Diagonal flat(SectionPlace low, SectionPlace high, double depth) {
    double run = high.y() - low.y();
    double rise = high.z() - low.z();
    double length = Math.sqrt(run * run + rise * rise);
    double tall = depth * length / run;
    double wide = depth * length / rise;
    List<SectionPlace> corners =
        List.of(
            low,
            high,
            new SectionPlace(high.y() - wide, high.z()),
            new SectionPlace(low.y(), low.z() + tall));
    return new Diagonal(
        corners,
        Direction.of(Shapes.line(low.y(), low.z(), high.y(), high.z())),
        true,
        new SectionPlace(low.y(), low.z() + tall / 2),
        tall,
        new SectionPlace(high.y() - wide / 2, high.z()),
        wide);
  }
}
