package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Solid;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.Screw;
import plycrag.layout.skin.Piece;

/** No timber of one facet, and no screw of its sheets, reaches into the sheets of another. */
public final class SheetsPierced implements Rule {
  private static final String NAME = "sheet-pierced";

  /** What is less is play, mm (a choice). */
  private static final double PLAY = 0.5;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String promise() {
    return "No timber and no screw of one facet reaches into the sheets of another.";
  }

  /** A convex part of a piece as it stands in the room. */
  private record Part(String piece, String facet, Solid solid) {}

  @Override
  public List<Finding> findings(Layout layout) {
    if (layout.facets().size() < 2) {
      return List.of();
    }
    double thickness = layout.wall().sheet().thickness();
    List<Part> parts = new ArrayList<>();
    layout.facets().forEach(facet -> addParts(facet, thickness, parts));
    SpatialIndex<Part> index = new SpatialIndex<>(parts, part -> part.solid().elevation());
    List<Finding> findings = new ArrayList<>();
    Faces faces = new Faces(layout);
    for (FacetLayout facet : layout.facets()) {
      Report report = new Report(NAME, facet.facet().name(), layout.wall().tape());
      for (Member member : facet.members()) {
        Solid body = member.body(thickness).mapped(facet.facet().plane()::toRoom);
        index.near(body.elevation(), 0).stream()
            .filter(part -> !part.facet().equals(facet.facet().name()))
            .filter(part -> part.solid().overlapsByMoreThan(PLAY, body))
            .map(part -> finding(member, part, part.solid().overlap(body), report))
            .findFirst()
            .ifPresent(findings::add);
      }
      for (Screw screw : facet.screws()) {
        faces
            .met(facet.facet().name(), at(facet, screw, 1), at(facet, screw, length(layout)))
            .map(other -> finding(screw, other, report))
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static double length(Layout layout) {
    return layout.wall().screws().length();
  }

  private static Vector3 at(FacetLayout facet, Screw screw, double depth) {
    return facet
        .facet()
        .plane()
        .toRoom(new Vector3(screw.centre().getX(), screw.centre().getY(), depth));
  }

  private static void addParts(FacetLayout facet, double thickness, List<Part> parts) {
    for (Piece piece : facet.pieces()) {
      piece.bodies(thickness).stream()
          .map(solid -> solid.mapped(facet.facet().plane()::toRoom))
          .forEach(solid -> parts.add(new Part(piece.mark(), facet.facet().name(), solid)));
    }
  }

  private static Finding finding(Member member, Part part, double depth, Report report) {
    return report.error(
        new Report.Thing(member.mark(), member.footprint().getCentroid()),
        part.piece(),
        new Measure(-depth, 0),
        member.mark()
            + " reaches "
            + report.tape().size(depth)
            + " into "
            + part.piece()
            + " of facet "
            + part.facet(),
        cure(report, part.facet()));
  }

  private static Finding finding(Screw screw, String facet, Report report) {
    return report.error(
        new Report.Thing(screw.mark(), screw.centre()),
        facet,
        new Measure(0, 0),
        "screw " + screw.mark() + " reaches into the sheets of facet " + facet,
        cure(report, facet));
  }

  private static String cure(Report report, String other) {
    return "let the outlines of facets "
        + report.facet()
        + " and "
        + other
        + " run up to their corner, or end further apart ([[facet]] outline)";
  }
}
