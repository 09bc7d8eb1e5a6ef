package plycrag.lists;

import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.finding.Finding;
import plycrag.finding.Place;

/** The findings, for a spreadsheet. */
public final class FindingTable {
  private static final List<String> COLUMNS =
      List.of(
          "rule",
          "severity",
          "a",
          "b",
          "facet",
          "u_mm",
          "v_mm",
          "found_mm",
          "required_mm",
          "suggestion");
  private static final Cell NONE = Cell.of("");

  private FindingTable() {}

  /** A row a finding, errors first. */
  public static Table of(CheckedLayout checked) {
    return new Table(
        "Clearance findings", COLUMNS, checked.findings().stream().map(FindingTable::row).toList());
  }

  private static List<Cell> row(Finding finding) {
    boolean onFacet = finding.place() instanceof Place.OnFacet;
    Place.OnFacet place = onFacet ? (Place.OnFacet) finding.place() : new Place.OnFacet("", 0, 0);
    return List.of(
        Cell.of(finding.rule()),
        Cell.of(finding.severity().word()),
        Cell.of(finding.first()),
        Cell.of(finding.second()),
        Cell.of(place.facet()),
        onFacet ? Cell.mm(place.u()) : NONE,
        onFacet ? Cell.mm(place.v()) : NONE,
        finding.measure().map(measure -> Cell.mm(measure.found())).orElse(NONE),
        finding.measure().map(measure -> Cell.mm(measure.required())).orElse(NONE),
        Cell.of(finding.suggestion()));
  }
}
