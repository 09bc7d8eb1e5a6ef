package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Direction;
import plycrag.geometry.Distances;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.Screw;
import plycrag.layout.skin.Piece;
import plycrag.wall.Clearances;
import plycrag.wall.Facet;
import plycrag.wall.Frame;
import plycrag.wall.Frame.SeamBacking;

/** A rule that asks of each screw how it lies in its piece and its member. */
abstract class ScrewRule implements Rule {
  static final String THINNER = "thinner screws ([screws] diameter)";

  /** A screw and what it joins. */
  record Grip(Screw screw, Piece piece, Bitten bitten) {
    Member member() {
      return bitten.member();
    }

    /**
     * How far it lies inside its member from the nearest of its ends or of its other sides, where
     * it enters and where it ends, mm.
     */
    double within(boolean ends) {
      return bitten.cuts().stream()
          .mapToDouble(cut -> cut.within(ends, screw.centre()))
          .min()
          .orElseThrow();
    }
  }

  /**
   * A member with what a level plane cuts of it where screws enter and where they end.
   *
   * @param cuts both of them
   */
  record Bitten(Member member, List<Cut> cuts) {
    static Bitten of(Member member, double bite) {
      Polygon deep = member.section(Math.min(bite, member.depth()));
      return new Bitten(
          member, Stream.of(member.footprint(), deep).map(area -> Cut.of(area, member)).toList());
    }
  }

  /** An area, with those of its edges that are a member's ends and its other ones. */
  private record Cut(Polygon area, List<LineString> ends, List<LineString> sides) {
    static Cut of(Polygon area, Member member) {
      Map<Boolean, List<LineString>> edges =
          Shapes.outerEdges(area).stream()
              .collect(
                  Collectors.partitioningBy(
                      edge -> Direction.of(edge).isParallel(member.direction())));
      return new Cut(area, edges.get(false), edges.get(true));
    }

    double within(boolean fromEnds, Point place) {
      double nearest =
          (fromEnds ? ends : sides)
              .stream()
                  .mapToDouble(edge -> Distances.from(place, edge))
                  .min()
                  .orElse(Double.POSITIVE_INFINITY);
      return Distances.covers(area, place) ? nearest : -nearest;
    }
  }

  @Override
  public final List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    double bite = layout.wall().screws().length() - layout.wall().sheet().thickness();
    for (FacetLayout facet : layout.facets()) {
      Map<String, Piece> pieces = byMark(facet.pieces(), Piece::mark);
      Map<String, Bitten> members =
          byMark(
              facet.members().stream().map(member -> Bitten.of(member, bite)).toList(),
              bitten -> bitten.member().mark());
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      for (Screw screw : facet.screws()) {
        Grip grip = new Grip(screw, pieces.get(screw.piece()), members.get(screw.member()));
        finding(grip, facet.facet(), layout, report).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static <T> Map<String, T> byMark(List<T> things, Function<T, String> mark) {
    return things.stream().collect(Collectors.toMap(mark, Function.identity()));
  }

  private Optional<Finding> finding(Grip grip, Facet facet, Layout layout, Report report) {
    Measure measure = measure(grip, layout.wall().clearance());
    if (!Tolerance.isSome(measure.shortfall())) {
      return Optional.empty();
    }
    Screw screw = grip.screw();
    return Optional.of(
        report.error(
            new Report.Thing(screw.mark(), screw.centre()),
            mark(grip),
            measure,
            "screw "
                + screw.mark()
                + " through "
                + screw.piece()
                + " into "
                + screw.member()
                + " "
                + report.standing(measure, other(grip)),
            NarrowStrip.at(screw.centre(), facet, layout.wall())
                .map(strip -> strip.cure(report.tape()))
                .orElseGet(() -> suggestion(layout.wall().frame()))));
  }

  /** What it measures, against what is required. */
  abstract Measure measure(Grip grip, Clearances clearance);

  /** The mark of what the screw is too near to. */
  abstract String mark(Grip grip);

  /** What the screw is too near to, in words. */
  abstract String other(Grip grip);

  /** What would mend it. */
  abstract String suggestion(Frame frame);

  /** Where two sheets share a member at a seam, two of them leave each sheet its own. */
  static String backed(Frame frame) {
    return frame.seams() == SeamBacking.SHARED
        ? "back the seams with doubled members "
            + Cure.word("[frame] seams", "doubled").words()
            + ", or "
        : "";
  }
}
