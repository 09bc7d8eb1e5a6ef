package plycrag.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.FacetLayout;
import plycrag.layout.Layout;
import plycrag.layout.Member;
import plycrag.units.Decimal;

/**
 * Every stick of the frame; equal ones share a row.
 *
 * @param rows plates, studs, blocking, facet by facet
 */
public record CutList(List<Row> rows) {
  private static final List<String> COLUMNS =
      List.of(
          "mark", "role", "section", "length_mm", "end_a_deg", "end_b_deg", "quantity", "facet");

  /**
   * Equal sticks.
   *
   * @param marks of each, in reading order
   * @param role what they are for
   * @param section the smaller side first, mm
   * @param length over the long points, mm
   * @param lowEnd how far the lower or left end slants from square, degrees; above zero the stick
   *     is longer on the side away from the sheet
   * @param highEnd how far the other end does
   * @param facet the facet they belong to, by name
   */
  public record Row(
      List<String> marks,
      String role,
      String section,
      double length,
      double lowEnd,
      double highEnd,
      String facet) {}

  private record Kind(String role, String length, String lowEnd, String highEnd, String facet) {}

  /** Copies the rows. */
  public CutList {
    rows = List.copyOf(rows);
  }

  /** The sticks of a layout. */
  public static CutList of(CheckedLayout checked) {
    Layout layout = checked.layout();
    Map<Kind, List<Member>> kinds = new LinkedHashMap<>();
    for (FacetLayout facet : layout.facets()) {
      for (Member member : facet.members()) {
        Kind kind =
            new Kind(
                member.role().word(),
                Decimal.of(member.length(), 1),
                Decimal.of(member.lowEnd(), 2),
                Decimal.of(member.highEnd(), 2),
                facet.facet().name());
        kinds.computeIfAbsent(kind, unseen -> new ArrayList<>()).add(member);
      }
    }
    String section = Section.name(layout.wall().frame());
    List<Row> rows = new ArrayList<>();
    kinds.forEach(
        (kind, members) ->
            rows.add(
                new Row(
                    members.stream().map(Member::mark).toList(),
                    kind.role(),
                    section,
                    members.get(0).length(),
                    members.get(0).lowEnd(),
                    members.get(0).highEnd(),
                    kind.facet())));
    return new CutList(rows);
  }

  /** The list for a spreadsheet; 0° is a square end. */
  public Table table() {
    return new Table("Cut list", COLUMNS, rows.stream().map(CutList::cells).toList());
  }

  private static List<Cell> cells(Row row) {
    return List.of(
        Cell.of(String.join(" ", row.marks())),
        Cell.of(row.role()),
        Cell.of(row.section()),
        Cell.mm(row.length()),
        Cell.number(row.lowEnd(), 2),
        Cell.number(row.highEnd(), 2),
        Cell.of(row.marks().size()),
        Cell.of(row.facet()));
  }
}
