package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Seam;
import plycrag.wall.Clearances;
import plycrag.wall.Frame;
import plycrag.wall.Sheet;

/**
 * Where sheets are set as bought, their differences add up along a row; at the last seam enough of
 * each must still bear on timber for its screws.
 */
public final class SeamTolerance implements Rule {
  private static final String NAME = "seam-tolerance";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String promise() {
    return "Sheets set as bought still bear on timber at every seam, at their worst sizes.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    if (layout.wall().sheet().seams().drift() == 0) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      for (Axis axis : Axis.values()) {
        List<Double> places =
            facet.seams().stream()
                .filter(seam -> seam.axis() == axis)
                .map(Seam::middle)
                .distinct()
                .sorted()
                .toList();
        for (int at = 0; at < places.size(); at++) {
          double drift = before(layout, axis, at, places) * layout.wall().sheet().seams().drift();
          Measure measure = measure(layout, drift);
          if (Tolerance.isSome(measure.shortfall())) {
            findings.add(finding(facet, axis, places.get(at), measure, layout));
          }
        }
      }
    }
    return findings;
  }

  /** How many sheets stand between a seam and the side from which whole sheets begin. */
  private static int before(Layout layout, Axis axis, int at, List<Double> places) {
    boolean fromLow =
        layout
            .wall()
            .sheet()
            .laying()
            .start()
            .map(start -> axis == Axis.UP ? start.isLeft() : start.isLower())
            .orElse(true);
    return fromLow ? at + 1 : places.size() - at;
  }

  /** What a sheet's back keeps of its timber, against what a screw between both edges asks. */
  private static Measure measure(Layout layout, double drift) {
    Frame frame = layout.wall().frame();
    Sheet sheet = layout.wall().sheet();
    Clearances clearance = layout.wall().clearance();
    double bearing =
        switch (frame.seams()) {
          case DOUBLED -> frame.breadth();
          case FLAT -> frame.depth() / 2;
          case SHARED -> frame.breadth() / 2;
        };
    return new Measure(
        bearing - sheet.seams().gap() / 2 - drift,
        clearance.screw().toSheetEdge() + clearance.screw().toMemberEdge());
  }

  private static Finding finding(
      FacetLayout facet, Axis axis, double place, Measure measure, Layout layout) {
    Report report = new Report(NAME, facet.facet().name(), layout.wall().tape());
    String way = axis == Axis.UP ? "up" : "across";
    return report.error(
        new Report.Thing(
            facet.facet().name(),
            axis == Axis.UP ? Shapes.point(place, 0) : Shapes.point(0, place)),
        "",
        measure,
        "at their worst sizes the sheets at the seam that runs "
            + way
            + " at "
            + report.tape().text(place)
            + " keep "
            + report.tape().size(Math.max(0, measure.found()))
            + " of timber; "
            + report.tape().size(measure.required())
            + " are needed for screws",
        "trim the sheets true ([sheet] edges), or back the seams more broadly ([frame] seams)");
  }
}
