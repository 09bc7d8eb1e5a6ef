package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.FacetLayout;
import plycrag.layout.Layout;
import plycrag.layout.Member;
import plycrag.layout.Piece;

/** Every edge of every piece, at a seam or not, has timber behind it over its whole length. */
public final class SeamBacked implements Rule {
  /** A bare stretch shorter than this is a rounding, mm. */
  private static final double LEAST = 0.1;

  @Override
  public String name() {
    return "seam-backing";
  }

  @Override
  public String promise() {
    return "Every edge of every sheet, at seams too, has timber behind it.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      SpatialIndex<Member> members = new SpatialIndex<>(facet.members(), Member::box);
      for (Piece piece : facet.pieces()) {
        for (LineString edge : Shapes.edges(piece.outline())) {
          addBare(piece, edge, members, report, findings);
        }
      }
    }
    return findings;
  }

  private static void addBare(
      Piece piece,
      LineString edge,
      SpatialIndex<Member> members,
      Report report,
      List<Finding> findings) {
    List<Polygon> behind =
        members.near(edge.getEnvelopeInternal(), 0).stream().map(Member::footprint).toList();
    Geometry bare = Shapes.without(edge, Shapes.together(behind));
    for (int at = 0; at < bare.getNumGeometries(); at++) {
      Geometry stretch = bare.getGeometryN(at);
      if (stretch.getLength() > LEAST) {
        findings.add(finding(piece, stretch, report));
      }
    }
  }

  private static Finding finding(Piece piece, Geometry stretch, Report report) {
    Point middle = stretch.getCentroid();
    Measure measure = new Measure(-stretch.getLength(), 0);
    return report.error(
        new Report.Thing(piece.mark(), middle),
        "",
        measure,
        report.tape().text(stretch.getLength())
            + " of an edge of piece "
            + piece.mark()
            + " has no timber behind it",
        "choose a smaller seam gap, broader timber or other backing at the seams");
  }
}
