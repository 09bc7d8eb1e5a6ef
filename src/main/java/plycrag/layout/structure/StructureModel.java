package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.layout.structure.JointLinks.MemberEnd;
import plycrag.solve.frame.Attachment;
import plycrag.solve.frame.Beam;
import plycrag.solve.frame.BeamEnd;
import plycrag.solve.frame.BeamSection;
import plycrag.solve.frame.FrameModel;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.FrameSupport;
import plycrag.solve.frame.ShearPanel;

/**
 * A wall as a frame, and which part of it each part of the frame is.
 *
 * @param frame what is solved
 * @param members in the order of the layout
 * @param joints the ways by which forces go through joints
 * @param anchors where each anchor holds, by its mark
 * @param edges the bar that stands for the edge beside an anchor that presses, by its mark
 * @param floor where it stands on the floor
 * @param tethers the marks of those that hold it
 */
public record StructureModel(
    FrameModel frame,
    List<MemberLine> members,
    List<JointPath> joints,
    Map<String, FrameNode> anchors,
    Map<String, String> edges,
    List<FrameNode> floor,
    List<String> tethers) {

  /**
   * Of a layout.
   *
   * @param angle of a facet that is hinged, degrees; without meaning where none is
   * @param timber how stiff its timber is
   * @param variant what is taken for stiff
   */
  public static StructureModel of(
      Layout layout, double angle, ElasticTimber timber, FrameVariant variant) {
    MemberAxes axes = new MemberAxes(layout, angle);
    Map<String, AxisStations> stations = new LinkedHashMap<>();
    axes.all().forEach(axis -> stations.put(axis.mark(), new AxisStations(axis)));
    GroundSupports ground = new GroundSupports(layout.wall(), stations);
    layout.support().ifPresent(support -> ground.anchor(support.anchors()));
    ground.reachEnds();
    TetherBars tethers = new TetherBars(layout, angle, stations);
    tethers.hold();
    JointLinks links =
        new JointLinks(stations, layout.fixings(), layout.wall().joints(), variant, timber);
    links.connect(layout.joints());
    ground.stand();
    List<ShearPanel> panels =
        variant.sheeted() ? new SheetPanels(layout, axes, stations, timber).all() : List.of();
    List<Beam> beams = new ArrayList<>();
    List<MemberLine> members = new ArrayList<>();
    for (AxisStations one : stations.values()) {
      members.add(line(one, links, timber, beams));
    }
    beams.addAll(links.links());
    List<FrameSupport> supports = new ArrayList<>(ground.supports());
    supports.addAll(tethers.supports());
    return new StructureModel(
        new FrameModel(
            beams,
            Stream.concat(tethers.bars().stream(), ground.bars().stream()).toList(),
            panels,
            supports),
        members,
        paths(links, members),
        ground.anchors(),
        ground.edges(),
        ground.floor(),
        tethers.bars().stream().map(bar -> bar.name()).toList());
  }

  private static List<JointPath> paths(JointLinks links, List<MemberLine> members) {
    List<JointPath> paths = new ArrayList<>(links.paths());
    for (MemberLine member : members) {
      MemberAxis axis = member.axis();
      for (boolean last : new boolean[] {false, true}) {
        Joint joint = links.starting().get(new MemberEnd(axis.mark(), last));
        if (joint != null && member.isHeld()) {
          List<MemberLine.Piece> pieces = member.pieces();
          paths.add(
              new JointPath(
                  joint,
                  pieces.get(last ? pieces.size() - 1 : 0).beam(),
                  last,
                  last ? axis.end() : axis.start(),
                  JointPath.BeamAxes.of(axis.way(), axis.across())));
        }
      }
    }
    return paths;
  }

  /** Adds the beams of a member. */
  private static MemberLine line(
      AxisStations stations, JointLinks links, ElasticTimber timber, List<Beam> beams) {
    MemberAxis axis = stations.axis();
    List<Double> places = new ArrayList<>();
    List<BeamEnd> ends = new ArrayList<>();
    links.held(new MemberEnd(axis.mark(), false)).ifPresent(end -> add(places, ends, 0, end));
    stations
        .all()
        .forEach(
            (along, node) -> add(places, ends, along, BeamEnd.rigid(attached(axis, along, node))));
    links
        .held(new MemberEnd(axis.mark(), true))
        .ifPresent(end -> add(places, ends, axis.length(), end));
    BeamSection section =
        BeamSection.rectangle(
                axis.breadth(), axis.depth(), timber.elasticity(), timber.shearModulus())
            .shearing(SHEARED);
    List<MemberLine.Piece> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < places.size(); i++) {
      String name = axis.mark() + "." + (i + 1);
      beams.add(new Beam(name, ends.get(i), ends.get(i + 1), axis.across(), section));
      pieces.add(new MemberLine.Piece(name, places.get(i), places.get(i + 1)));
    }
    return new MemberLine(axis, pieces);
  }

  /** What of a rectangle resists shear. */
  private static final double SHEARED = 5.0 / 6;

  private static void add(List<Double> places, List<BeamEnd> ends, double place, BeamEnd end) {
    places.add(place);
    ends.add(end);
  }

  private static Attachment attached(MemberAxis axis, double along, FrameNode node) {
    return new Attachment(node, axis.at(along).minus(node.place()));
  }

  /** The member of a mark. */
  public MemberLine member(String mark) {
    return members.stream().filter(one -> one.axis().mark().equals(mark)).findFirst().orElseThrow();
  }
}
