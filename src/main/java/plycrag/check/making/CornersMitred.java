package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Fold;

/**
 * Walls that meet in a corner meet at an angle that a saw can halve; where one does not run up to
 * the other, the corner stays open, which is told.
 */
public final class CornersMitred implements Rule {
  private static final String NAME = "corner-saw";

  /** A saw tilts to 45° (common practice, no source), which halves a corner of this, degrees. */
  private static final double GREATEST_TURN = 90;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String promise() {
    return "Walls that meet in a corner meet at an angle that a saw can halve.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (Facet facet : layout.wall().facets()) {
      Report report = new Report(NAME, facet.name(), layout.wall().tape());
      facet.folds(Fold.Place.RIGHT).stream()
          .filter(fold -> Tolerance.isMore(Math.abs(fold.turn()), GREATEST_TURN))
          .forEach(fold -> findings.add(tooSharp(facet, fold, report)));
    }
    List<List<Facet>> runs = Facet.runs(layout.wall().facets(), Function.identity());
    for (int right = 1; right < runs.size(); right++) {
      OpenCorner.between(runs.get(right - 1), runs.get(right))
          .map(corner -> open(corner, layout.wall().tape()))
          .ifPresent(findings::add);
    }
    return findings;
  }

  private static Finding tooSharp(Facet facet, Fold fold, Report report) {
    return report.error(
        thing(facet),
        fold.other(),
        new Measure(GREATEST_TURN - Math.abs(fold.turn()), 0),
        "facets "
            + facet.name()
            + " and "
            + fold.other()
            + " meet at "
            + Decimal.of(Math.abs(fold.turn()), 1)
            + "° from straight, and no saw halves more than 90°",
        "turn the walls less ([[facet]] turn), or let them lean less apart ([[facet]] angle)");
  }

  private static Finding open(OpenCorner corner, Tape tape) {
    String left = corner.left().facet().name();
    String right = corner.right().facet().name();
    Facet loose =
        corner.left().facet().isRectangle() ? corner.right().facet() : corner.left().facet();
    return new Report(NAME, left, tape)
        .warning(
            thing(corner.left().facet()),
            right,
            new Measure(-corner.widest(), 0),
            "the corner between facets "
                + left
                + " and "
                + right
                + " stays open over "
                + tape.text(tape.snap(corner.length()))
                + " of its height, "
                + tape.text(tape.snap(corner.widest()))
                + " wide at "
                + tape.text(tape.snap(corner.left().place().z()))
                + " above the floor",
            "let the outline of facet "
                + loose.name()
                + " run up to the corner ([[facet]] outline), or close the gap so that nobody"
                + " reaches in");
  }

  private static Report.Thing thing(Facet facet) {
    return new Report.Thing(facet.name(), Shapes.point(0, facet.length() / 2));
  }
}
