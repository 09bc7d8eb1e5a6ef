package plycrag.wall.room;

import java.util.List;
import java.util.Optional;
import plycrag.geometry.Trig;
import plycrag.wall.buying.Section;

/**
 * What is around the wall; what is not told is not judged.
 *
 * @param sides how far the room reaches
 * @param ceiling what is above
 * @param ways what everything has to be brought in through
 * @param noDrill whether nothing may be fixed to the building
 * @param floor what everything stands on
 * @param obstacles what stands in the room
 * @param mat what people fall on
 * @param handling what things weigh and who lifts them
 */
public record Room(
    Sides sides,
    Ceiling ceiling,
    Ways ways,
    boolean noDrill,
    Floor floor,
    List<Obstacle> obstacles,
    Mat mat,
    Handling handling) {
  /** Copies the obstacles. */
  public Room {
    obstacles = List.copyOf(obstacles);
  }

  /**
   * The image of the room in a mirror through the middle of a wall.
   *
   * @param width of the wall, mm
   */
  public Room mirrored(double width) {
    return new Room(
        new Sides(/* left= */ sides.right(), /* right= */ sides.left(), sides.front()),
        ceiling.mirrored(width),
        ways,
        noDrill,
        new Floor(0 - floor.fall(), floor.pitch()),
        obstacles.stream().map(obstacle -> obstacle.mirrored(width)).toList(),
        mat,
        handling);
  }

  /**
   * How far the room reaches.
   *
   * @param left from the wall's left edge to the left, mm
   * @param right from its right edge to the right, mm
   * @param front from the foot of its face toward the climber, mm
   */
  public record Sides(Optional<Double> left, Optional<Double> right, Optional<Double> front) {}

  /**
   * What everything stands on.
   *
   * @param fall how much lower it is at the wall's right end than at its left, mm; below zero it is
   *     higher
   * @param pitch how it rises toward the climber, degrees; below zero it falls
   */
  public record Floor(double fall, double pitch) {
    /** Whether it is as high everywhere. */
    public boolean isLevel() {
      return fall == 0 && pitch == 0;
    }

    /**
     * The plane it lies in, as high as the foot of the wall's face where that is higher.
     *
     * @param width of the wall, mm
     */
    public RoomPlane plane(double width) {
      return new RoomPlane(Math.min(0, fall), -fall / width, Trig.tan(pitch));
    }
  }

  /** What carries a ceiling. */
  public enum Members {
    /** Joists of known section and span. */
    JOISTS,
    /** Trusses, which carry nothing but what they were made for. */
    TRUSS,
    /** Nobody has looked. */
    UNKNOWN
  }

  /** Which way joists run. */
  public enum Run {
    /** From the wall toward the climber. */
    OUT,
    /** Along the wall. */
    ALONG
  }

  /**
   * The joists of a ceiling.
   *
   * @param section of one, if it is known
   * @param span from support to support, mm
   * @param spacing from middle to middle, mm
   * @param first where the first one's middle is, from the wall's left or from the foot of its
   *     face, mm
   * @param run which way they run
   */
  public record Joists(
      Optional<Section> section, Optional<Double> span, double spacing, double first, Run run) {}

  /**
   * An opening on the way in.
   *
   * @param width mm
   * @param height mm
   * @param turn the clear width of what things have to be turned out of into it, mm; empty: they
   *     come straight
   */
  public record Way(Optional<Double> width, Optional<Double> height, Optional<Double> turn) {}

  /**
   * The narrowest openings on the way in.
   *
   * @param door the narrowest door
   * @param stair the narrowest stair, its height that above the steps
   */
  public record Ways(Way door, Way stair) {}

  /**
   * Something in the room, a box.
   *
   * @param name what it is
   * @param corner the one that is leftmost, nearest to the wall and lowest
   * @param size how far it goes from there
   */
  public record Obstacle(String name, Corner corner, Size size) {

    private Obstacle mirrored(double wall) {
      Corner image = new Corner(wall - corner.left() - size.width(), corner.out(), corner.low());
      return new Obstacle(name, image, size);
    }

    /**
     * The corner of such a box that is leftmost, nearest to the wall and lowest.
     *
     * @param left from the wall's left edge, mm; below zero to the left of it
     * @param out from the foot of the face toward the climber, mm; below zero behind it
     * @param low above the floor, mm
     */
    public record Corner(double left, double out, double low) {}

    /**
     * How large such a box is.
     *
     * @param width along the wall, mm
     * @param depth toward the climber, mm
     * @param height mm
     */
    public record Size(double width, double depth, double height) {}
  }

  /**
   * The matting.
   *
   * @param thickness mm, if there is any
   * @param front how far it reaches in front of the outermost edge, mm; empty: over all of the fall
   *     zone
   * @param side how far it reaches beyond the wall's ends, mm; empty: as far as in front, or to
   *     what ends the room
   */
  public record Mat(Optional<Double> thickness, Optional<Double> front, Optional<Double> side) {}

  /**
   * What things weigh and who lifts them.
   *
   * @param timberDensity kg/m³
   * @param sheetDensity kg/m³
   * @param perPerson what one person lifts, kg
   * @param bringIn what is carried in
   */
  public record Handling(
      double timberDensity, double sheetDensity, double perPerson, BringIn bringIn) {}

  /** What is carried into the room. */
  public enum BringIn {
    /** Sticks and sheets; frames are built there. */
    PARTS,
    /** Frames built elsewhere, one facet each, and sheets. */
    FRAMES
  }
}
