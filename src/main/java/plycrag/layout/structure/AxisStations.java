package plycrag.layout.structure;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import plycrag.geometry.Vector3;
import plycrag.solve.frame.Attachment;
import plycrag.solve.frame.FrameNode;
import plycrag.units.Decimal;

/**
 * The places along a member at which something holds it. What comes nearer than {@link #APART} to
 * another shares its place along the member.
 */
final class AxisStations {
  /** A beam shorter than this is not told from a place, mm. */
  private static final double APART = 1;

  private final MemberAxis axis;
  private final TreeMap<Double, FrameNode> nodes = new TreeMap<>();

  AxisStations(MemberAxis axis) {
    this.axis = axis;
  }

  MemberAxis axis() {
    return axis;
  }

  /** The station nearest to a place, which lies where the member's line does. */
  Attachment near(Vector3 place) {
    return near(axis.foot(place));
  }

  Attachment near(double along) {
    return find(along).orElseGet(() -> put(along, axis.at(along)));
  }

  /** A station whose node is where it is held, beside the line perhaps. */
  FrameNode heldAt(Vector3 place) {
    double along = axis.foot(place);
    return find(along).orElseGet(() -> put(along, place)).node();
  }

  private Attachment put(double along, Vector3 place) {
    FrameNode node = new FrameNode(axis.mark() + " at " + Decimal.of(along, 3), place);
    nodes.put(along, node);
    return attached(along, node);
  }

  /** The station that is there already. */
  Optional<Attachment> find(double along) {
    return nodes.subMap(along - APART, true, along + APART, true).entrySet().stream()
        .findFirst()
        .map(entry -> attached(entry.getKey(), entry.getValue()));
  }

  private Attachment attached(double along, FrameNode node) {
    return new Attachment(node, axis.at(along).minus(node.place()));
  }

  /** In order along the member. */
  Map<Double, FrameNode> all() {
    return nodes;
  }
}
