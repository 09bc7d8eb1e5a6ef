package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.geometry.Contours;
import plycrag.geometry.Distances;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.sheets.CutOut;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.WorkedFace;
import plycrag.wall.machine.KeepOut;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** Nothing is drilled or cut where a clamp holds the sheet, and tools pass over it. */
public final class KeepOutsKept implements Rule {

  @Override
  public String name() {
    return "keep-out";
  }

  @Override
  public String promise() {
    return "No hole and no cut meets a place to keep out of, and the safe height clears them all.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (KeepOut place : layout.wall().machine().equipment().keepOuts()) {
      tooHigh(place, layout).ifPresent(findings::add);
      Polygon area =
          Shapes.rectangle(
              place.corner().left(), place.corner().low(), place.right(), place.high());
      for (WorkedFace face : layout.faces()) {
        findings.addAll(holes(face.sheet(), place, area, layout));
      }
      for (LaidSheet sheet : layout.sheets()) {
        findings.addAll(cuts(sheet, place, area, layout));
      }
    }
    return findings;
  }

  private Optional<Finding> tooHigh(KeepOut place, Layout layout) {
    double safe = layout.wall().machine().heights().safe();
    return place.rise() < safe
        ? Optional.empty()
        : Optional.of(
            new WholeWall(name(), Severity.ERROR)
                .finding(
                    place.name(),
                    "",
                    new Measure(safe, place.rise()),
                    place.name()
                        + " stands "
                        + layout.wall().tape().size(place.rise())
                        + " above the sheet, and tools pass over it at "
                        + layout.wall().tape().size(safe),
                    "raise the safe height ([machine] safe-height), or take a lower clamp"));
  }

  private List<Finding> holes(LaidSheet sheet, KeepOut place, Polygon area, Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (MachinedHole hole : sheet.holes()) {
      double apart =
          Distances.from(Shapes.point(hole.spot().x(), hole.spot().y()), area)
              - radius(hole, layout);
      if (apart < 0) {
        findings.add(meets(hole, place, apart, layout));
      }
    }
    return findings;
  }

  /** Of the hole, or of the tool above it where that is wider, mm. */
  private static double radius(MachinedHole hole, Layout layout) {
    Machine machine = layout.wall().machine();
    ToolBox tools =
        new ToolBox(machine.equipment().tools(), machine.equipment().limits().spindle());
    double sinker = tools.forHead(hole.bore().diameter()).map(Tool::diameter).orElse(0.0);
    return Math.max(hole.bore().diameter(), hole.isSunk() ? sinker : 0) / 2;
  }

  private Finding meets(MachinedHole hole, KeepOut place, double apart, Layout layout) {
    Report report = new Report(name(), hole.marks().facet(), layout.wall().tape());
    Measure measure = new Measure(apart, 0);
    return report.error(
        new Report.Thing(hole.mark(), hole.place()),
        place.name(),
        measure,
        "the tool for "
            + hole.name()
            + " on sheet "
            + hole.marks().sheet()
            + " "
            + report.standing(measure, place.name()),
        "hold the sheet elsewhere ([[keep-out]]), or move the hole");
  }

  private List<Finding> cuts(LaidSheet sheet, KeepOut place, Polygon area, Layout layout) {
    Machine machine = layout.wall().machine();
    Optional<Tool> cutter = ToolBox.cutter(machine, layout.wall().sheet().thickness());
    return cutter.stream()
        .flatMap(
            tool ->
                CutOut.of(sheet, layout.offcuts()).stream()
                    .filter(one -> !contours(one, sheet, tool).spares(area))
                    .map(one -> cut(tool.name(), place.name(), one.mark())))
        .toList();
  }

  private static Contours contours(CutOut one, LaidSheet sheet, Tool tool) {
    return new Contours(one.area(), sheet.area(), tool.diameter() / 2);
  }

  private Finding cut(String tool, String place, String piece) {
    return new Finding(
        name(),
        Severity.ERROR,
        new Place.WholeWall(),
        piece,
        place,
        Optional.empty(),
        tool + " meets " + place + " on its way round piece " + piece,
        "hold the sheet elsewhere ([[keep-out]])");
  }
}
