package plycrag.book;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.check.CheckedLayout;
import plycrag.document.WallPage;
import plycrag.document.WallPage.Remark;
import plycrag.document.Xyz;
import plycrag.drawing.pen.TitleLines;
import plycrag.finding.Finding;
import plycrag.finding.FindingGroup;
import plycrag.finding.Place;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.BuildOrder;
import plycrag.layout.standing.BuildStep;
import plycrag.stock.Costs;
import plycrag.stock.JobFigures;

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
    List<BuildStep> steps = BuildOrder.of(layout);
    StepWords words = new StepWords(layout);
    return new WallPage(
        layout.wall().name(),
        checked.isApproved() ? "" : TitleLines.STAMP,
        Cautions.FOOTER + " " + TitleLines.support(checked) + ".",
        new WallFacts(checked).all(figures, costs),
        new PartsInSpace(layout, steps).all(),
        steps.stream().map(step -> words.heading(step) + ".").toList(),
        checked.groups().stream().map(this::remark).toList());
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
