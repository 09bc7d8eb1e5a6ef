package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.units.Decimal;
import plycrag.wall.Facet;
import plycrag.wall.Fold;

/** Walls that meet in a corner meet all the way up, at an angle that a saw can halve. */
public final class CornersClose implements Rule {
  private static final String NAME = "corner-open";

  /** A saw tilts to 45° (common practice, no source), which halves a corner of this, degrees. */
  private static final double GREATEST_TURN = 90;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String promise() {
    return "Walls that meet in a corner meet all the way up, at an angle that a saw can halve.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Facet> facets = layout.wall().facets();
    List<Finding> findings = new ArrayList<>();
    for (Facet facet : facets) {
      Report report = new Report(NAME, facet.name(), layout.wall().tape());
      facet
          .fold(Fold.Place.RIGHT)
          .filter(fold -> Math.abs(fold.turn()) > GREATEST_TURN)
          .ifPresent(fold -> findings.add(tooSharp(facet, fold, report)));
      facet
          .fold(Fold.Place.RIGHT)
          .ifPresent(fold -> addOpen(facet, named(facets, fold.other()), facets, report, findings));
      upper(facet, facets)
          .filter(above -> facet.fold(Fold.Place.ABOVE).isEmpty())
          .ifPresent(above -> findings.add(pointed(facet, above, report)));
    }
    return findings;
  }

  /** The facets above a corner meet too, if there are two. */
  private static void addOpen(
      Facet facet, Facet beside, List<Facet> facets, Report report, List<Finding> findings) {
    Optional<Facet> one = upper(facet, facets);
    Optional<Facet> other = upper(beside, facets);
    if (one.isPresent() && other.isPresent() && one.get().fold(Fold.Place.RIGHT).isEmpty()) {
      findings.add(open(one.get(), other.get(), report));
    }
  }

  private static Optional<Facet> upper(Facet facet, List<Facet> facets) {
    return facets.stream()
        .filter(
            above ->
                above
                    .fold(Fold.Place.BELOW)
                    .filter(fold -> fold.other().equals(facet.name()))
                    .isPresent())
        .findFirst();
  }

  private static Facet named(List<Facet> facets, String name) {
    return facets.stream().filter(facet -> facet.name().equals(name)).findFirst().orElseThrow();
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
        "turn the walls less, or let them lean less apart");
  }

  private static Finding open(Facet one, Facet other, Report report) {
    return report.error(
        thing(one),
        other.name(),
        new Measure(0, 0),
        "facets "
            + one.name()
            + " and "
            + other.name()
            + " begin at "
            + report.tape().text(one.raise())
            + " and "
            + report.tape().text(other.raise())
            + " above the floor, so that their corner stays open",
        "make the facets below them end at one height");
  }

  private static Finding pointed(Facet facet, Facet above, Report report) {
    return report.error(
        thing(facet),
        above.name(),
        new Measure(0, 0),
        "the sides of facet "
            + facet.name()
            + " meet before its top, and facet "
            + above.name()
            + " has nothing to stand on",
        "make it wider or shorter, or let it lean less");
  }

  private static Report.Thing thing(Facet facet) {
    return new Report.Thing(facet.name(), Shapes.point(0, facet.length() / 2));
  }
}
