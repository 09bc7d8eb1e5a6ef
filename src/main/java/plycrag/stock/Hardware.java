package plycrag.stock;

import java.util.EnumMap;
import java.util.Map;
import plycrag.layout.Joint;
import plycrag.layout.Layout;
import plycrag.params.JointParameters;
import plycrag.wall.Wall;

/**
 * What one joint of the frame takes. Nothing relies on a screw's withdrawal from end grain: where a
 * member ends on another a bracket carries it.
 *
 * @param kind of hardware
 * @param count how many of it
 */
public record Hardware(Kind kind, int count) {
  private static final double TOLERANCE = 1e-6;

  /** The kinds there are. */
  public enum Kind {
    /** A bracket with its screws. */
    BRACKET("bracket"),
    /** A flat strap across a splice, or bent to a fold, with its screws. */
    STRAP("strap"),
    /** A bolt with two washers and a nut. */
    BOLT("bolt"),
    /** A hinge with its screws. */
    HINGE("hinge"),
    /** A screw through one member into the other. */
    SCREW("screw");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in lists. */
    public String word() {
      return word;
    }
  }

  /** The hardware of a joint. */
  public static Hardware of(Joint joint, Wall wall) {
    JointParameters joints = wall.joints();
    return switch (joint.kind()) {
      case END -> new Hardware(Kind.BRACKET, 1);
      case SPLICE -> new Hardware(Kind.STRAP, 1);
      case STUD_SPLICE -> new Hardware(Kind.STRAP, 2);
      case SIDE -> new Hardware(Kind.SCREW, along(joint.length(), joints.screwSpacing()));
      case FOLD -> new Hardware(Kind.BOLT, along(joint.length(), joints.boltSpacing()));
      case HINGE -> new Hardware(Kind.HINGE, along(joint.length(), joints.boltSpacing()));
      case FOLD_EDGES -> new Hardware(Kind.STRAP, along(joint.length(), joints.boltSpacing()));
    };
  }

  /** How many of each kind all joints take together. */
  static Map<Kind, Integer> counts(Layout layout) {
    Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
    for (Joint joint : layout.joints()) {
      Hardware hardware = of(joint, layout.wall());
      counts.merge(hardware.kind(), hardware.count(), Integer::sum);
    }
    return counts;
  }

  /** As many as keep a spacing, one near each end; two at least. */
  private static int along(double length, double spacing) {
    return Math.max(2, (int) Math.ceil(length / spacing - TOLERANCE) + 1);
  }
}
