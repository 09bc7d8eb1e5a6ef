package plycrag.wall.room;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;
import plycrag.wall.room.Room.Joists;
import plycrag.wall.room.Room.Members;

/**
 * What is above: a ceiling, rafters that rise from a low wall behind, or both, the lower of which
 * ends the room.
 *
 * @param height above the left end of the foot of the wall's face, mm
 * @param pitch how it rises
 * @param kneeWall the low wall behind, if there is one
 * @param members what carries it
 * @param joists where joists lie, if it is joists
 */
public record Ceiling(
    Optional<Double> height,
    Pitch pitch,
    Optional<KneeWall> kneeWall,
    Members members,
    Joists joists) {

  /**
   * How a ceiling rises.
   *
   * @param out toward the climber, degrees; below zero it falls
   * @param right to the right along the wall, degrees; below zero it falls
   */
  public record Pitch(double out, double right) {}

  /**
   * A low wall that rafters stand on and rise from toward the climber.
   *
   * @param height up to where they begin, mm
   * @param behind how far behind the foot of the wall's face it stands, mm
   * @param pitch how steeply they rise, degrees
   */
  public record KneeWall(double height, double behind, double pitch) {}

  /**
   * The image of what is above in a mirror through the middle of a wall.
   *
   * @param width of the wall, mm
   */
  Ceiling mirrored(double width) {
    return new Ceiling(
        plane().map(plane -> plane.at(width, 0)),
        new Pitch(pitch.out(), 0 - pitch.right()),
        kneeWall,
        members,
        joists);
  }

  /** The ceiling, if its height is told. */
  public Optional<RoomPlane> plane() {
    return height.map(told -> new RoomPlane(told, Trig.tan(pitch.right()), Trig.tan(pitch.out())));
  }

  /** The rafters over the low wall, if there is one. */
  public Optional<RoomPlane> rafters() {
    return kneeWall.map(
        wall -> {
          double rise = Trig.tan(wall.pitch());
          return new RoomPlane(wall.height() + wall.behind() * rise, 0, rise);
        });
  }

  /** All that ends the room above. */
  public List<RoomPlane> planes() {
    return Stream.concat(plane().stream(), rafters().stream()).toList();
  }

  /** Whether anything is told of it. */
  public boolean isTold() {
    return height.isPresent() || kneeWall.isPresent();
  }

  /** How high the room is at a place; empty if nothing is told. */
  public Optional<Double> at(Vector3 place) {
    return planes().stream().map(plane -> plane.at(place.x(), place.y())).min(Double::compare);
  }
}
