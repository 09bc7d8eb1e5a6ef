package plycrag.proof.replay;

import static plycrag.proof.replay.ReadingException.require;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What stays in force from line to line (NISTIR 6556, modal groups), the tool and the speed apart.
 * How a controller wakes up is not known: whatever a motion depends on must have been stated.
 */
final class Settings {
  private static final double INCH = 25.4;
  private static final List<ModalGroup> MODES =
      List.of(
          ModalGroup.PLANE,
          ModalGroup.DISTANCE,
          ModalGroup.FEED_MODE,
          ModalGroup.UNITS,
          ModalGroup.OFFSET);

  private final Map<ModalGroup, Code> codes = new EnumMap<>(ModalGroup.class);
  private double feed;

  /** Takes the modes of a line over. */
  void take(Block block) throws ReadingException {
    Code zero = codes.getOrDefault(ModalGroup.OFFSET, block.codes().get(ModalGroup.OFFSET));
    require(block.code(ModalGroup.OFFSET).orElse(zero) == zero, "the zero is changed on the way");
    for (ModalGroup group : ModalGroup.values()) {
      block.code(group).ifPresent(code -> codes.put(group, code));
    }
  }

  /** Takes the feed of a line over. */
  void takeFeed(Block block) throws ReadingException {
    if (block.has('F')) {
      feed = block.value('F') * scale();
      require(feed > 0, "a feed of nothing or less");
    }
  }

  /** Millimetres a minute. */
  double feed() throws ReadingException {
    require(feed > 0, "a cut without a feed");
    return feed;
  }

  /** Millimetres in one of the program's lengths. */
  double scale() throws ReadingException {
    require(codes.containsKey(ModalGroup.UNITS), "a length before its unit is stated");
    return codes.get(ModalGroup.UNITS) == Code.G20 ? INCH : 1;
  }

  boolean centresAreAtZero() {
    return codes.get(ModalGroup.ARC_CENTRE) == Code.G90_1;
  }

  boolean isIncremental() {
    return codes.get(ModalGroup.DISTANCE) == Code.G91;
  }

  boolean returnsToFirstHeight() throws ReadingException {
    require(codes.containsKey(ModalGroup.CYCLE_RETURN), "a cycle before G98 or G99");
    return codes.get(ModalGroup.CYCLE_RETURN) == Code.G98;
  }

  void requireModes() throws ReadingException {
    for (ModalGroup mode : MODES) {
      require(codes.containsKey(mode), "a motion before the modes are stated");
    }
  }

  /** The motion that a line with a place asks for. */
  Code motion() throws ReadingException {
    Code motion = codes.get(ModalGroup.MOTION);
    require(motion != null && motion != Code.G80, "a place without a motion");
    return motion;
  }
}
