package plycrag.solve.frame;

import java.util.List;
import java.util.Map;
import plycrag.geometry.Vector3;

/** Makes links of bars, sheets and springs. */
final class LinkMaker {
  private final Map<FrameNode, Integer> nodes;

  LinkMaker(Map<FrameNode, Integer> nodes) {
    this.nodes = nodes;
  }

  Link bar(Bar bar) {
    Vector3 along = bar.end().place().minus(bar.start().place());
    Vector3 side =
        Math.abs(along.x()) < bar.length() / 2 ? new Vector3(1, 0, 0) : new Vector3(0, 1, 0);
    LocalAxes axes = LocalAxes.of(along, side);
    List<Attachment> ends = List.of(bar.start(), bar.end());
    double[] stress = Link.square(apart(ends, axes.y()), 1 / bar.length());
    double[] other = Link.square(apart(ends, axes.z()), 1 / bar.length());
    for (int i = 0; i < stress.length; i++) {
      stress[i] += other[i];
    }
    return new Link(freedoms(ends), apart(ends, axes.x()), bar.stiffness() / bar.length(), stress);
  }

  private static double[] apart(List<Attachment> ends, Vector3 way) {
    return row(ends, List.of(way.times(-1), way));
  }

  /** The shear of a sheet's middle, as if its corners' motions were spread bilinearly. */
  Link panel(ShearPanel panel) {
    PanelShape shape = PanelShape.of(panel.corners().stream().map(Attachment::place).toList());
    return new Link(
        freedoms(panel.corners()),
        row(panel.corners(), shape.shear()),
        panel.stiffness() * shape.area());
  }

  /** The force that it is told by is that on the frame. */
  Link spring(FrameSupport support) {
    int freedom = FreedomCount.of(nodes.get(support.node()), support.freedom());
    return new Link(new int[] {freedom}, new double[] {-1}, support.stiffness());
  }

  private int[] freedoms(List<Attachment> places) {
    int[] freedoms = new int[FreedomCount.OF_NODE * places.size()];
    for (int i = 0; i < freedoms.length; i++) {
      int node = nodes.get(places.get(i / FreedomCount.OF_NODE).node());
      freedoms[i] = FreedomCount.OF_NODE * node + i % FreedomCount.OF_NODE;
    }
    return freedoms;
  }

  /** The sum of how far each place moves along its way. */
  private static double[] row(List<Attachment> places, List<Vector3> ways) {
    double[] row = new double[FreedomCount.OF_NODE * places.size()];
    for (int i = 0; i < places.size(); i++) {
      PieceEnd.put(row, FreedomCount.OF_NODE * i, ways.get(i));
      PieceEnd.put(row, FreedomCount.OF_NODE * i + 3, places.get(i).arm().cross(ways.get(i)));
    }
    return row;
  }
}
