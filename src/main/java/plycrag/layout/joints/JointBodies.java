package plycrag.layout.joints;

import java.util.List;
import java.util.stream.Stream;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.layout.frame.Joint;
import plycrag.solve.fixing.LapScrews;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.SteelPlace;
import plycrag.solve.fixing.ThroughBolt;
import plycrag.solve.fixing.ThroughLine;
import plycrag.wall.JointFasteners;
import plycrag.wall.Wall;

/** What holds a joint, as it lies in the room. */
final class JointBodies {
  private final JointFasteners sizes;
  private final Fixings fixings;

  JointBodies(Wall wall, Fixings fixings) {
    this.sizes = wall.joints();
    this.fixings = fixings;
  }

  /** The bolts across a fold; none for others. */
  List<ThroughBolt> bolts(Joint joint) {
    return joint.kind() == Joint.Kind.FOLD
        ? lines(joint).map(line -> ThroughBolt.of(line, sizes.bolts().diameter())).toList()
        : List.of();
  }

  /** The screws between members side by side, or into an end; none for others. */
  List<Rod> screws(Joint joint) {
    boolean isScrewed = joint.kind() == Joint.Kind.SIDE || joint.kind() == Joint.Kind.END;
    return isScrewed ? lines(joint).map(this::screw).toList() : List.of();
  }

  private Stream<ThroughLine> lines(Joint joint) {
    return fixings.throughOf(joint).map(LapScrews::lines).orElse(List.of()).stream();
  }

  private Rod screw(ThroughLine line) {
    return new Rod(line.from(), line.way(), sizes.screws().length(), sizes.screws().diameter());
  }

  /** The brackets, straps or hinges; none for others. */
  List<SteelPlace> steel(Joint joint) {
    return fixings.steelOf(joint).map(SteelChoice::places).orElse(List.of());
  }

  /** All of them as bodies, with the heads of screws. */
  Stream<Solid> of(Joint joint) {
    return Stream.of(
            bolts(joint).stream().flatMap(bolt -> bolt.bodies().stream()),
            screws(joint).stream().map(Rod::body),
            steel(joint).stream().flatMap(place -> place.bodies().stream()))
        .flatMap(all -> all);
  }
}
