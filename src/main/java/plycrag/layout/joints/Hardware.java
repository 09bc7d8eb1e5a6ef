package plycrag.layout.joints;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Surface;
import plycrag.geometry.Vector3;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.Tether;
import plycrag.solve.fixing.SteelFit;
import plycrag.solve.fixing.SteelPlace;
import plycrag.solve.fixing.ThroughBolt;

/**
 * A piece of hardware in its place.
 *
 * @param mark its kind's letters and a number
 * @param kind what it is
 * @param joints the marks of the joints that it holds; none of what holds to the building
 * @param members the marks of the members that it holds or goes through
 * @param place in the room: of what is screwed or bolted through, under its head; of what lies on
 *     timber, the middle of the face that does, or of the bend; else where it is held
 * @param way of length one: along a shank; off a face, or out of a corner, halving it
 * @param form what it is made of
 */
public record Hardware(
    String mark,
    Kind kind,
    List<String> joints,
    List<String> members,
    Vector3 place,
    Vector3 way,
    Form form) {

  /** Copies the marks. */
  public Hardware {
    joints = List.copyOf(joints);
    members = List.copyOf(members);
  }

  /** What there is. No part of a wall that is none has a mark with the same letters. */
  public enum Kind {
    /** An angle bracket with its screws. */
    BRACKET("bracket", "BR"),
    /** A flat strap with its screws. */
    STRAP("strap", "SP"),
    /** A hinge with its screws. */
    HINGE("hinge", "HN"),
    /** A bolt with two washers and a nut. */
    BOLT("bolt", "BT"),
    /** A screw through one member into another. */
    SCREW("screw", "SC"),
    /** A rectangle of plywood with its screws. */
    GUSSET("gusset", "GU"),
    /** What fixes a member to the building. */
    ANCHOR("anchor", "AN"),
    /** What holds a hinged facet at its angle. */
    TETHER("tether", "TE"),
    /** What keeps it from lifting. */
    LOCK("lock", "LK");

    private final String word;
    private final String letters;

    Kind(String word, String letters) {
      this.word = word;
      this.letters = letters;
    }

    /** In a word. */
    public String word() {
      return word;
    }

    /** What its marks begin with. */
    public String letters() {
      return letters;
    }
  }

  /** What a piece is made of, and what it takes of the room. */
  public sealed interface Form {

    /** Its own body, in convex parts that only touch; none of what has a place alone. */
    List<Solid> parts();

    /** The surface of that. */
    Optional<Surface> surface();

    /** The screws that hold it, from under their heads. */
    default List<Rod> screws() {
      return List.of();
    }

    /** All that it takes of the room, with its screws and their heads. */
    default List<Solid> taken() {
      return Stream.concat(parts().stream(), screws().stream().map(Rod::body)).toList();
    }
  }

  /** A bracket, a strap or a hinge. */
  public record Steel(SteelFit fit, SteelPlace steel) implements Form {
    @Override
    public List<Solid> parts() {
      return steel.plates();
    }

    @Override
    public Optional<Surface> surface() {
      return Optional.of(steel.surface());
    }

    @Override
    public List<Rod> screws() {
      return steel.screws();
    }

    @Override
    public List<Solid> taken() {
      return steel.bodies();
    }
  }

  /** A bolt through timber. */
  public record Bolted(ThroughBolt bolt) implements Form {
    @Override
    public List<Solid> parts() {
      return bolt.bodies();
    }

    @Override
    public Optional<Surface> surface() {
      return Optional.of(bolt.surface());
    }
  }

  /** A screw of its own; its head is sunk. */
  public record Screwed(Rod screw) implements Form {
    @Override
    public List<Solid> parts() {
      return List.of(screw.body());
    }

    @Override
    public Optional<Surface> surface() {
      return Optional.of(Surface.of(screw.body()));
    }
  }

  /** A gusset. */
  public record Plywood(Gusset gusset) implements Form {
    @Override
    public List<Solid> parts() {
      return List.of(gusset.fit().body());
    }

    @Override
    public Optional<Surface> surface() {
      return Optional.of(Surface.of(gusset.fit().body()));
    }

    @Override
    public List<Rod> screws() {
      return gusset.fit().rods();
    }
  }

  /**
   * An anchor, as far as it is in timber.
   *
   * @param anchor what it holds to what
   * @param bolt with its head and washer
   * @param sunk how deep these lie in the timber, under what ends on it there; 0: they lie on it,
   *     mm
   */
  public record Anchored(Anchor anchor, ThroughBolt bolt, double sunk) implements Form {
    @Override
    public List<Solid> parts() {
      return bolt.bodies();
    }

    @Override
    public Optional<Surface> surface() {
      return Optional.of(bolt.surface());
    }
  }

  /** A strut, strap, chain or rope, whose fittings follow from what it is. */
  public record Tethered(Tether tether) implements Form {
    @Override
    public List<Solid> parts() {
      return List.of();
    }

    @Override
    public Optional<Surface> surface() {
      return Optional.empty();
    }
  }
}
