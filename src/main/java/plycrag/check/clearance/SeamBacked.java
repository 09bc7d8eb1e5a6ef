package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.StraightLine;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Piece;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.Wall;

/**
 * Every edge of every piece, at a seam or not, has timber behind it over its whole length. Two
 * kinds are let be: edges that stop short of a fold for their square cuts stand out as far as those
 * ask, and timber goes straight round an opening that is round or slants, so that its edge may
 * stand further from it, which is told.
 */
public final class SeamBacked implements Rule {
  /** An edge nearer to an opening's than this is one of its own, mm. */
  private static final double BESIDE = 0.1;

  /** What is longer is no corner, at which timber is cut short for other timber, mm (a choice). */
  private static final double CORNER = 100;

  @Override
  public String name() {
    return "seam-backing";
  }

  @Override
  public String promise() {
    return "Every edge of every sheet, at seams too, has timber behind it; near the corners of"
        + " a sheet no further away than it is thick. At openings that are round or slant, what"
        + " stands further away is told.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      if (!facet.hasStuds()) {
        continue; // too short for a frame, which is a rule of its own
      }
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      SpatialIndex<Member> members = new SpatialIndex<>(facet.members(), Member::box);
      double overhang = layout.wall().overhang(facet.facet());
      for (Piece piece : facet.pieces()) {
        for (LineString edge : Shapes.edges(piece.back())) {
          if (isRound(edge, facet.facet())) {
            continue;
          }
          for (Geometry stretch : bare(edge, members, overhang, layout.wall().rimOverhang())) {
            findings.add(
                finding(
                    piece, stretch, facet, cure(stretch, facet.facet(), layout.wall()), report));
          }
        }
        odd(facet.facet())
            .forEach(
                cutout ->
                    rim(piece, cutout, facet, layout.wall().rimOverhang())
                        .ifPresent(rim -> findings.add(finding(piece, cutout, rim, report))));
      }
    }
    return findings;
  }

  /** Whether an edge belongs to an opening that timber cannot follow; its box is framed instead. */
  private static boolean isRound(LineString edge, Facet facet) {
    return odd(facet).anyMatch(cutout -> isRim(edge, cutout));
  }

  private static boolean isRim(LineString edge, Cutout cutout) {
    return cutout.shape().getBoundary().distance(edge.getCentroid()) < BESIDE;
  }

  /** What of a piece's edge at such an opening stands further from timber than it may. */
  private static Optional<BareRim> rim(Piece piece, Cutout cutout, FacetLayout facet, double most) {
    List<LineString> edges =
        Shapes.edges(piece.back()).stream().filter(edge -> isRim(edge, cutout)).toList();
    return BareRim.of(edges, facet.members(), most);
  }

  private static Stream<Cutout> odd(Facet facet) {
    return facet.cutouts().stream().filter(cutout -> !cutout.isRectangle());
  }

  /** The stretches without timber. */
  private static List<Geometry> bare(
      LineString edge, SpatialIndex<Member> members, double overhang, double rim) {
    List<Polygon> near =
        members.near(edge.getEnvelopeInternal(), Math.max(overhang, rim)).stream()
            .map(Member::footprint)
            .toList();
    if (isBacked(edge, near)) {
      return List.of();
    }
    Geometry timber = Shapes.together(near);
    Geometry bare = Shapes.without(edge, timber);
    return IntStream.range(0, bare.getNumGeometries())
        .mapToObj(bare::getGeometryN)
        .filter(stretch -> stretch.getLength() > Tolerance.MARKED)
        .filter(
            stretch ->
                timber.isEmpty() || standsOut(stretch, timber) > allowed(stretch, overhang, rim))
        .toList();
  }

  /** How far a stretch may stand out beyond timber, mm: at a corner as far as a sheet is thick. */
  private static double allowed(Geometry stretch, double overhang, double rim) {
    double most = Math.max(overhang, Tolerance.TOUCH);
    return stretch.getLength() <= CORNER ? Math.max(most, rim) : most;
  }

  /**
   * Whether timber lies behind all of an edge, told from where the edge's line meets each piece.
   */
  private static boolean isBacked(LineString edge, List<Polygon> timber) {
    Direction along = Direction.of(edge);
    StraightLine line = new StraightLine(along, along.across().along(edge.getStartPoint()));
    List<Span> backed = new ArrayList<>();
    timber.forEach(one -> backed.addAll(line.within(one)));
    backed.sort(Comparator.comparingDouble(Span::low));
    Span whole = along.span(edge);
    double reached = whole.low();
    for (Span span : backed) {
      if (span.low() - reached > Tolerance.MARKED / 2) {
        return false;
      }
      reached = Math.max(reached, span.high());
    }
    return whole.high() - reached < Tolerance.MARKED / 2;
  }

  /** How far a straight stretch stands out beyond the timber beside it, mm. */
  private static double standsOut(Geometry stretch, Geometry timber) {
    LineString line = (LineString) stretch;
    return Stream.of(line.getStartPoint(), line.getCentroid(), line.getEndPoint())
        .mapToDouble(timber::distance)
        .max()
        .orElseThrow();
  }

  private static Finding finding(Piece piece, Cutout cutout, BareRim rim, Report report) {
    return report.warning(
        new Report.Thing(piece.mark(), rim.place()),
        cutout.name(),
        new Measure(-rim.length(), 0),
        report.tape().text(rim.length())
            + " of the edge of piece "
            + piece.mark()
            + " at cutout "
            + cutout.name()
            + " stand up to "
            + report.tape().text(rim.worst())
            + " from timber",
        "screw blocks behind that edge, or give the cutout level and upright sides");
  }

  /** What would bring timber behind a stretch: at a corner of walls what they leave no room for. */
  private static String cure(Geometry stretch, Facet facet, Wall wall) {
    Optional<NarrowStrip> strip = NarrowStrip.at(stretch, facet, wall);
    if (strip.isPresent()) {
      return strip.get().cure(wall.tape());
    }
    if (wall.overhang(facet) > 0) {
      return "mitre what meets at the fold ([wall] fold-edges)";
    }
    return facet.folds().stream()
        .filter(fold -> fold.isCorner() && isAt(fold, facet, stretch))
        .findFirst()
        .map(
            fold ->
                "facets "
                    + facet.name()
                    + " and "
                    + fold.other()
                    + " leave no room for timber there; let them turn less ([[facet]] turn), lean by"
                    + " the same angle, or end at the same height ([[facet]] angle, "
                    + facet.told().key().word()
                    + ")")
        .orElse("choose a smaller seam gap, broader timber or other backing at the seams");
  }

  private static boolean isAt(Fold fold, Facet facet, Geometry stretch) {
    LineString side = Shapes.outerEdges(facet.boundary()).get(fold.side());
    return side.distance(stretch) < CORNER;
  }

  private static Finding finding(
      Piece piece, Geometry stretch, FacetLayout facet, String suggestion, Report report) {
    Point middle = stretch.getCentroid();
    Measure measure = new Measure(-stretch.getLength(), 0);
    double worst =
        BareRim.of(List.of((LineString) stretch), facet.members(), 0)
            .map(BareRim::worst)
            .orElse(0.0);
    double away = Math.max(worst, BareRim.away(middle, facet.members()));
    return report.error(
        new Report.Thing(piece.mark(), middle),
        "",
        measure,
        report.tape().text(stretch.getLength())
            + " of an edge of piece "
            + piece.mark()
            + " has no timber behind it, and stands up to "
            + report.tape().text(away)
            + " from it",
        suggestion);
  }
}
