package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.check.CheckedLayout;
import plycrag.check.structure.StructureLine;
import plycrag.document.WallPage;
import plycrag.document.WallPage.Fact;
import plycrag.document.WallPage.Remark;
import plycrag.document.Xyz;
import plycrag.drawing.pen.TitleLines;
import plycrag.finding.Finding;
import plycrag.finding.FindingGroup;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.Assembly;
import plycrag.layout.standing.Assembly.Step;
import plycrag.stock.Costs;
import plycrag.stock.JobFigures;
import plycrag.units.Count;
import plycrag.units.Decimal;
import plycrag.units.Significant;

/** What the page that shows the wall in space tells of it. */
public final class WallInSpace {
  private final CheckedLayout checked;
  private final Layout layout;

  private WallInSpace(CheckedLayout checked) {
    this.checked = checked;
    this.layout = checked.layout();
  }

  /**
   * The page.
   *
   * @param figures of the whole job
   * @param costs as far as the price list tells them
   */
  public static WallPage of(CheckedLayout checked, JobFigures figures, Costs costs) {
    return new WallInSpace(checked).page(figures, costs);
  }

  private WallPage page(JobFigures figures, Costs costs) {
    List<Step> steps = Assembly.of(layout).steps();
    return new WallPage(
        layout.wall().name(),
        checked.isApproved() ? "" : TitleLines.STAMP,
        Cautions.FOOTER + " " + TitleLines.support(checked) + ".",
        facts(figures, costs),
        new PartsInSpace(layout, steps).all(),
        steps.stream().map(AssemblySteps::sentence).map(words -> words + ".").toList(),
        checked.groups().stream().map(this::remark).toList());
  }

  private List<Fact> facts(JobFigures figures, Costs costs) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("to climb on", Decimal.of(figures.area(), 2) + " m²"));
    facts.add(new Fact("as built", Decimal.of(figures.standing(), 0) + " kg"));
    facts.add(new Fact("for holds", Count.of(layout.inserts().size(), "insert")));
    facts.add(new Fact("to buy", Count.of(layout.sheets().size(), "sheet")));
    facts.add(new Fact("price", price(costs.total(), costs.currency())));
    facts.add(new Fact("strength", strength()));
    facts.add(new Fact("found", found()));
    return facts;
  }

  private static String price(Costs.Sum total, String currency) {
    if (total.priced() == 0) {
      return "not told";
    }
    String known = total.known().toPlainString() + " " + currency;
    return total.isComplete() ? known : known + " and " + total.missing() + " without a price";
  }

  private String strength() {
    if (!checked.isReckoned()) {
      return "not reckoned";
    }
    int failing = checked.structure().failing();
    String lines = failing == 0 ? "no line fails" : Count.of(failing, "line") + " fail";
    return checked
        .structure()
        .governing(line -> true)
        .flatMap(StructureLine::utilisation)
        .map(largest -> "utilisation " + Significant.of(largest) + ", " + lines)
        .orElse(lines);
  }

  private String found() {
    return Count.of(checked.findings(Severity.ERROR).size(), "error")
        + ", "
        + Count.of(checked.findings(Severity.WARNING).size(), "warning");
  }

  private Remark remark(FindingGroup group) {
    Finding first = group.first();
    return new Remark(
        first.severity().word(),
        group.sentence(),
        first.suggestion(),
        Stream.of(first.first(), first.second()).filter(mark -> !mark.isEmpty()).toList(),
        place(first));
  }

  private Optional<Xyz> place(Finding finding) {
    return finding.place() instanceof Place.OnFacet on ? inRoom(on) : Optional.empty();
  }

  private Optional<Xyz> inRoom(Place.OnFacet place) {
    return layout.facets().stream()
        .map(FacetLayout::facet)
        .filter(facet -> facet.name().equals(place.facet()))
        .findFirst()
        .map(facet -> facet.plane().toRoom(new Vector3(place.u(), place.v(), 0)))
        .map(at -> new Xyz(at.x(), at.y(), at.z()));
  }
}
