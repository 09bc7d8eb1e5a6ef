package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.skin.Piece;
import plycrag.solve.frame.Attachment;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.ShearPanel;
import plycrag.solve.timber.FastenerSlip;
import plycrag.wall.FacetAtAngle;

/**
 * Sheets as panels between the stations nearest to their corners. Their stiffness is that of the
 * plywood in row with what the screws round it give: γ = q/(G t) + 2 q s/K (1/b + 1/h), q the shear
 * along an edge, s from screw to screw, K the slip modulus of one (each edge slips by q s/K against
 * its timber). The screws inside count for nothing. A piece whose corners do not find four stations
 * of their own resists nothing.
 */
final class SheetPanels {
  /** Of plywood in its plane, N/mm²: the least of those that are published, from memory. */
  private static final double SHEAR_MODULUS = 500;

  private final Layout layout;
  private final MemberAxes axes;
  private final Map<String, AxisStations> members;
  private final ElasticTimber timber;

  SheetPanels(
      Layout layout, MemberAxes axes, Map<String, AxisStations> members, ElasticTimber timber) {
    this.layout = layout;
    this.axes = axes;
    this.members = members;
    this.timber = timber;
  }

  List<ShearPanel> all() {
    List<ShearPanel> panels = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      List<Attachment> stations = stations(facet);
      for (Piece piece : facet.pieces()) {
        List<Attachment> corners =
            corners(piece, axes.facet(facet.facet())).stream()
                .map(corner -> nearest(stations, corner))
                .toList();
        if (corners.stream().map(Attachment::node).distinct().count() == corners.size()) {
          panels.add(
              new ShearPanel(
                  "sheet " + piece.mark() + " of " + facet.facet().name(),
                  corners,
                  stiffness(piece)));
        }
      }
    }
    return panels;
  }

  private List<Attachment> stations(FacetLayout facet) {
    List<Attachment> stations = new ArrayList<>();
    axes.of(facet.facet())
        .map(axis -> members.get(axis.mark()))
        .forEach(one -> one.all().values().forEach(node -> stations.add(Attachment.at(node))));
    return stations;
  }

  private static List<Vector3> corners(Piece piece, FacetAtAngle facet) {
    Envelope box = piece.box();
    return List.of(
        facet.at(new Vector3(box.getMinX(), box.getMinY(), 0)),
        facet.at(new Vector3(box.getMaxX(), box.getMinY(), 0)),
        facet.at(new Vector3(box.getMaxX(), box.getMaxY(), 0)),
        facet.at(new Vector3(box.getMinX(), box.getMaxY(), 0)));
  }

  private static Attachment nearest(List<Attachment> stations, Vector3 corner) {
    FrameNode nearest = null;
    for (Attachment one : stations) {
      if (nearest == null || distance(one.node(), corner) < distance(nearest, corner)) {
        nearest = one.node();
      }
    }
    return new Attachment(nearest, corner.minus(nearest.place()));
  }

  private static double distance(FrameNode node, Vector3 corner) {
    return node.place().minus(corner).length();
  }

  private double stiffness(Piece piece) {
    Envelope box = piece.box();
    double spacing = layout.wall().screws().edgeSpacing();
    double slip =
        FastenerSlip.ultimate(
            FastenerSlip.bolt(timber.density(), layout.wall().screws().diameter()).value());
    double sheet = 1 / (SHEAR_MODULUS * layout.wall().sheet().thickness());
    double screws = 2 * spacing / slip * (1 / box.getWidth() + 1 / box.getHeight());
    return 1 / (sheet + screws);
  }
}
