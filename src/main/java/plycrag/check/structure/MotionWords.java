package plycrag.check.structure;

import java.util.Optional;
import plycrag.geometry.Vector3;
import plycrag.layout.structure.MemberLine;
import plycrag.layout.structure.StructureModel;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.Freedom;
import plycrag.solve.frame.Motion;

/** Says in words what moves when a frame is none. */
final class MotionWords {
  private final StructureModel model;

  MotionWords(StructureModel model) {
    this.model = model;
  }

  /** As {@code the top of post PO1 moves along the wall}. */
  String of(Motion motion) {
    return place(motion.node()) + " " + moves(motion.freedom());
  }

  private static String moves(Freedom freedom) {
    return switch (freedom) {
      case ALONG_X -> "moves along the wall";
      case ALONG_Y -> "moves toward the climber and away";
      case ALONG_Z -> "moves up and down";
      case ABOUT_X, ABOUT_Y, ABOUT_Z -> "turns";
    };
  }

  private String place(FrameNode node) {
    Optional<MemberLine> member =
        model.members().stream()
            .filter(one -> node.name().startsWith(one.axis().mark() + " at "))
            .findFirst();
    return member
        .map(one -> end(one, node) + one.axis().role().word() + " " + one.axis().mark())
        .orElse(node.name());
  }

  /** Which part of a member it is, to the third of its length. */
  private static String end(MemberLine member, FrameNode node) {
    double part = member.axis().foot(node.place()) / member.axis().length();
    Vector3 way = member.axis().way();
    boolean isUpright = Math.abs(way.z()) > 0.5;
    if (part > 1.0 / 3 && part < 2.0 / 3) {
      return "the middle of ";
    }
    boolean isEnd = part >= 2.0 / 3;
    if (!isUpright) {
      return "an end of ";
    }
    return isEnd == way.z() > 0 ? "the top of " : "the foot of ";
  }

  /** The mark of the part that moves most, or the wall. */
  String part(Motion motion) {
    return model.members().stream()
        .map(one -> one.axis().mark())
        .filter(mark -> motion.node().name().startsWith(mark + " at "))
        .findFirst()
        .orElse("wall");
  }
}
