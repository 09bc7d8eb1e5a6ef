package plycrag.solve.frame;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A frame without its loads. Its nodes are those that its parts name.
 *
 * @param beams members that bend
 * @param bars members that only pull and push
 * @param panels sheets
 * @param supports what holds it to the ground
 */
public record FrameModel(
    List<Beam> beams, List<Bar> bars, List<ShearPanel> panels, List<FrameSupport> supports) {
  /** Refuses two parts or two nodes of one name, and a freedom that is held twice. */
  public FrameModel {
    beams = List.copyOf(beams);
    bars = List.copyOf(bars);
    panels = List.copyOf(panels);
    supports = List.copyOf(supports);
    distinct(
        Stream.of(
                beams.stream().map(Beam::name),
                bars.stream().map(Bar::name),
                panels.stream().map(ShearPanel::name),
                supports.stream().map(FrameSupport::name))
            .flatMap(names -> names));
    distinct(nodes(beams, bars, panels, supports).stream().map(FrameNode::name));
  }

  /** Of beams and supports alone. */
  public static FrameModel of(List<Beam> beams, List<FrameSupport> supports) {
    return new FrameModel(beams, List.of(), List.of(), supports);
  }

  /** All, in the order in which parts first name them. */
  public List<FrameNode> nodes() {
    return nodes(beams, bars, panels, supports);
  }

  private static List<FrameNode> nodes(
      List<Beam> beams, List<Bar> bars, List<ShearPanel> panels, List<FrameSupport> supports) {
    Set<FrameNode> nodes = new LinkedHashSet<>();
    beams.forEach(beam -> nodes.addAll(List.of(beam.start().at().node(), beam.end().at().node())));
    bars.forEach(bar -> nodes.addAll(List.of(bar.start().node(), bar.end().node())));
    panels.forEach(panel -> panel.corners().forEach(corner -> nodes.add(corner.node())));
    supports.forEach(support -> nodes.add(support.node()));
    return List.copyOf(nodes);
  }

  private static void distinct(Stream<String> names) {
    Set<String> seen = new HashSet<>();
    String twice = names.filter(name -> !seen.add(name)).collect(Collectors.joining(", "));
    if (!twice.isEmpty()) {
      throw new IllegalArgumentException("two of one name: " + twice);
    }
  }
}
