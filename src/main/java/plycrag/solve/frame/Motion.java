package plycrag.solve.frame;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import plycrag.geometry.Tolerance;

/**
 * A shape in which a frame moves, without a size of its own: its greatest translation along an axis
 * is 1 mm, or, if nothing is displaced, its greatest rotation 1 radian.
 *
 * @param node who moves most, the first of equals
 * @param freedom along or about which axis it does
 * @param amount 1, or -1 if it moves against that axis
 * @param all how each node moves, in the order of nodes
 */
public record Motion(
    FrameNode node, Freedom freedom, double amount, Map<FrameNode, NodeMotion> all) {
  /** Of motions by freedom. */
  static Motion of(List<FrameNode> nodes, double[] motions) {
    int most = most(nodes, motions, false);
    most = motions[most] == 0 ? most(nodes, motions, true) : most;
    double size = Math.abs(motions[most]);
    double[] shape =
        IntStream.range(0, motions.length).mapToDouble(i -> motions[i] / size).toArray();
    Map<FrameNode, NodeMotion> all = new LinkedHashMap<>();
    for (int i = 0; i < nodes.size(); i++) {
      all.put(nodes.get(i), NodeMotion.of(shape, FreedomCount.OF_NODE * i));
    }
    return new Motion(
        nodes.get(most / FreedomCount.OF_NODE),
        Freedom.of(most % FreedomCount.OF_NODE),
        Math.signum(motions[most]),
        all);
  }

  /** The same with its greatest part along its axis: for a motion that goes either way. */
  static Motion eitherWay(List<FrameNode> nodes, double[] motions) {
    Motion motion = of(nodes, motions);
    return motion.amount < 0
        ? of(nodes, IntStream.range(0, motions.length).mapToDouble(i -> -motions[i]).toArray())
        : motion;
  }

  private static int most(List<FrameNode> nodes, double[] motions, boolean turning) {
    int most = turning ? 3 : 0;
    for (int i = 0; i < FreedomCount.OF_NODE * nodes.size(); i++) {
      boolean turns = i % FreedomCount.OF_NODE >= 3;
      double more = Math.abs(motions[most]) * (1 + Tolerance.VANISHING);
      most = turns == turning && Math.abs(motions[i]) > more ? i : most;
    }
    return most;
  }
}
