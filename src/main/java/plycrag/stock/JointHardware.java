package plycrag.stock;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.layout.joints.Gusset;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.SteelFit;
import plycrag.wall.JointFasteners;

/**
 * What one joint of the frame takes. Nothing relies on a screw's withdrawal from end grain: where a
 * member ends on another a bracket carries it, or straps where both lie flush; where the catalogue
 * has neither, members beside it or a gusset.
 *
 * @param kind of hardware
 * @param count how many of it; of a gusset over several joints, 0 for all but the first
 * @param steel which bracket, strap or hinge; empty for others, and where the catalogue has none
 * @param gussets which; none for others
 * @param others the marks of the members beside it that hold it, if it takes nothing itself
 */
public record JointHardware(
    Kind kind, int count, Optional<SteelFit> steel, List<Gusset> gussets, List<String> others) {
  /** The kinds there are. */
  public enum Kind {
    /** A bracket with its screws. */
    BRACKET("bracket"),
    /** A flat strap over members that lie flush, with its screws. */
    STRAP("strap"),
    /** A bolt with two washers and a nut. */
    BOLT("bolt"),
    /** A hinge with its screws. */
    HINGE("hinge"),
    /** A screw through one member into the other. */
    SCREW("screw"),
    /** A rectangle of plywood with its screws. */
    GUSSET("gusset"),
    /** Nothing of its own: members beside it hold it. */
    OTHERS("held by others");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in lists. */
    public String word() {
      return word;
    }
  }

  private JointHardware(Kind kind, int count, Optional<SteelFit> steel) {
    this(kind, count, steel, List.of(), List.of());
  }

  /** Whether it is something that the catalogue of brackets, straps and hinges would have. */
  public boolean isSteel() {
    return kind == Kind.BRACKET || kind == Kind.STRAP || kind == Kind.HINGE;
  }

  /** The hardware of a joint. */
  public static JointHardware of(Joint joint, Layout layout) {
    List<Gusset> gussets = layout.fixings().gussetsOf(joint);
    List<String> others = layout.fixings().othersOf(joint);
    if (!gussets.isEmpty()) {
      boolean isFirst = gussets.get(0).joints().get(0).equals(joint.mark());
      int count = isFirst ? gussets.size() : 0;
      return new JointHardware(Kind.GUSSET, count, Optional.empty(), gussets, others);
    }
    return others.isEmpty()
        ? ofMetal(joint, layout)
        : new JointHardware(Kind.OTHERS, 0, Optional.empty(), gussets, others);
  }

  private static JointHardware ofMetal(Joint joint, Layout layout) {
    JointFasteners joints = layout.wall().joints();
    int each = along(joint.length(), joints.bolts().spacing());
    return switch (joint.kind()) {
      case END ->
          layout.fixings().throughOf(joint).isPresent()
              ? through(Kind.SCREW, joint, layout)
              : onEnd(joint, layout);
      case SPLICE -> steel(Kind.STRAP, 1, joint, layout);
      case STUD_SPLICE -> steel(Kind.STRAP, 2, joint, layout);
      case SIDE -> through(Kind.SCREW, joint, layout);
      case FOLD -> through(Kind.BOLT, joint, layout);
      case HINGE -> steel(Kind.HINGE, each, joint, layout);
      case FOLD_EDGES -> steel(Kind.BRACKET, each, joint, layout);
    };
  }

  private static JointHardware steel(Kind kind, int count, Joint joint, Layout layout) {
    return new JointHardware(
        kind, count, layout.fixings().steelOf(joint).flatMap(SteelChoice::fit));
  }

  /** A bracket, or a strap on every side that is flush. */
  private static JointHardware onEnd(Joint joint, Layout layout) {
    Optional<SteelChoice> choice =
        layout
            .fixings()
            .steelOf(joint)
            .filter(one -> one.fit().filter(fit -> fit.steel().shape() == Shape.STRAP).isPresent());
    return choice
        .map(one -> steel(Kind.STRAP, one.count(), joint, layout))
        .orElseGet(() -> steel(Kind.BRACKET, 1, joint, layout));
  }

  private static JointHardware through(Kind kind, Joint joint, Layout layout) {
    int count = layout.fixings().throughOf(joint).map(found -> found.spots().size()).orElse(0);
    return new JointHardware(kind, count, Optional.empty());
  }

  /** How many of each kind all joints take together. */
  static Map<Kind, Integer> counts(Layout layout) {
    Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
    for (Joint joint : layout.joints()) {
      JointHardware hardware = of(joint, layout);
      counts.merge(hardware.kind(), hardware.count(), Integer::sum);
    }
    return counts;
  }

  /** As many as keep a spacing, one near each end; two at least. */
  private static int along(double length, double spacing) {
    return Math.max(2, (int) Tolerance.wholeUp(length / spacing) + 1);
  }
}
