package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

import java.util.Optional;

/** Which letters have a meaning beside which codes. What has none is a fault, not ignored. */
final class CodeLetters {
  private static final String ALWAYS = "FST";
  private static final String ARC = "IJRXYZ";
  private static final String STRAIGHT = "XYZ";

  private CodeLetters() {}

  static void check(Block block, Settings settings) throws ReadingException {
    String known =
        ALWAYS
            + ofMotion(block, settings)
            + (waits(block) ? "P" : "")
            + (measures(block) ? "H" : "");
    for (char letter : block.values().keySet()) {
      require(known.indexOf(letter) >= 0, "the word " + letter + " has no meaning here");
    }
  }

  private static boolean measures(Block block) {
    return block.code(ModalGroup.TOOL_LENGTH).equals(Optional.of(Code.G43));
  }

  private static boolean waits(Block block) {
    return block.code(ModalGroup.WAIT).isPresent();
  }

  private static String ofMotion(Block block, Settings settings) throws ReadingException {
    if (!moves(block)) {
      return "";
    }
    Code motion = settings.motion();
    if (motion.isCycle()) {
      require(!waits(block), "a wait and a cycle on one line");
      return STRAIGHT + ofCycle(motion);
    }
    return motion.isArc() ? ARC : STRAIGHT;
  }

  private static String ofCycle(Code cycle) {
    return switch (cycle) {
      case G82 -> "LPR";
      case G73, G83 -> "LQR";
      default -> "LR";
    };
  }

  /** Whether a line moves the tool. */
  static boolean moves(Block block) {
    return block.hasPlace()
        || block.code(ModalGroup.MOTION).filter(code -> code != Code.G80).isPresent();
  }
}
