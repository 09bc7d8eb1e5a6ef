package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.units.Tape;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;

/** Openings lie on their facet, apart from each other, and leave it in one piece. */
public final class CutoutsFit implements Rule {
  private static final String NAME = "cutout-place";

  /** What is smaller is a rounding, mm². */
  private static final double CRUMB = 1;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String promise() {
    return "Every opening lies on its facet, apart from others, and leaves the facet in one part.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (Facet facet : layout.wall().facets()) {
      Report report = new Report(NAME, facet.name(), layout.wall().tape());
      for (int at = 0; at < facet.cutouts().size(); at++) {
        addFindings(facet, at, report, findings);
      }
      double parts = Shapes.areas(rest(facet)).size();
      if (!facet.cutouts().isEmpty() && parts != 1) {
        findings.add(splitting(facet, report));
      }
    }
    return findings;
  }

  private static Geometry rest(Facet facet) {
    return Shapes.without(
        facet.boundary(), Shapes.together(facet.cutouts().stream().map(Cutout::shape).toList()));
  }

  private static void addFindings(Facet facet, int at, Report report, List<Finding> findings) {
    Cutout cutout = facet.cutouts().get(at);
    Geometry outside = Shapes.without(cutout.shape(), facet.boundary());
    if (outside.getArea() > CRUMB) {
      double beyond = beyond(outside, facet);
      findings.add(
          finding(
              cutout,
              -beyond,
              "cutout "
                  + cutout.name()
                  + " goes "
                  + report.tape().text(beyond)
                  + " beyond facet "
                  + facet.name(),
              "move it or make it smaller; it may touch the facet's edge",
              report));
    }
    for (Cutout other : facet.cutouts().subList(at + 1, facet.cutouts().size())) {
      double shared = Shapes.shared(cutout.shape(), other.shape()).getArea();
      if (shared > CRUMB) {
        findings.add(
            finding(
                cutout,
                -shared,
                "cutouts " + cutout.name() + " and " + other.name() + " lie on each other",
                "move one of them, or give one outline for both",
                report));
      }
    }
  }

  /** How far what lies outside a facet is from it, mm. */
  private static double beyond(Geometry outside, Facet facet) {
    return Stream.of(outside.getCoordinates())
        .mapToDouble(corner -> Shapes.point(corner.x, corner.y).distance(facet.boundary()))
        .max()
        .orElse(0);
  }

  private static Finding splitting(Facet facet, Report report) {
    Tape tape = report.tape();
    return finding(
        facet.cutouts().get(0),
        0,
        "the cutouts of facet " + facet.name() + " do not leave it in one part",
        "leave a strip of at least "
            + tape.text(tape.snapUp(100))
            + " beside or between them, or, where something stands through all of it, draw facets"
            + " side by side ([[facet]] beside, turn = 0)",
        report);
  }

  private static Finding finding(
      Cutout cutout, double found, String sentence, String suggestion, Report report) {
    return report.error(
        new Report.Thing(cutout.name(), cutout.shape().getCentroid()),
        "",
        new Measure(found, 0),
        sentence,
        suggestion);
  }
}
