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

/** Every stick of the frame; equal ones share a row. */
public final class CutList {
  private static final List<String> COLUMNS =
      List.of(
          "mark", "role", "section", "length_mm", "end_a_deg", "end_b_deg", "quantity", "facet");

  private CutList() {}

  private record Kind(String role, String length, String facet) {}

  /** The list; lengths over the long points, 0° a square end. */
  public static Table of(CheckedLayout checked) {
    Layout layout = checked.layout();
    Map<Kind, List<Member>> kinds = new LinkedHashMap<>();
    for (FacetLayout facet : layout.facets()) {
      for (Member member : facet.members()) {
        Kind kind =
            new Kind(member.role().word(), Decimal.of(member.length(), 1), facet.facet().name());
        kinds.computeIfAbsent(kind, unseen -> new ArrayList<>()).add(member);
      }
    }
    List<List<Cell>> rows = new ArrayList<>();
    String section = Section.name(layout.wall().frame());
    kinds.forEach((kind, members) -> rows.add(row(kind, members, section)));
    return new Table("Cut list", COLUMNS, rows);
  }

  private static List<Cell> row(Kind kind, List<Member> members, String section) {
    return List.of(
        Cell.of(String.join(" ", members.stream().map(Member::mark).toList())),
        Cell.of(kind.role()),
        Cell.of(section),
        Cell.mm(members.get(0).length()),
        Cell.of(0),
        Cell.of(0),
        Cell.of(members.size()),
        Cell.of(kind.facet()));
  }
}
