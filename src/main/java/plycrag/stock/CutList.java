package plycrag.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.MemberSections;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.EndCut;
import plycrag.layout.frame.Member;
import plycrag.layout.support.PlacedMember;
import plycrag.units.Decimal;
import plycrag.wall.buying.Section;

/**
 * Every stick of the frame and of what holds it up; equal ones share a row.
 *
 * @param rows plates, studs, blocking, facet by facet
 */
public record CutList(List<Row> rows) {
  /** What stands in the place of a facet's name for members of the support. */
  static final String SUPPORT = "support";

  private static final List<String> COLUMNS =
      List.of(
          "mark",
          "role",
          "section",
          "length_mm",
          "end_a_deg",
          "end_b_deg",
          "quantity",
          "facet",
          "mitre_a_deg",
          "mitre_b_deg",
          "grade");

  /**
   * Equal sticks.
   *
   * @param marks of each, in reading order
   * @param role what they are for
   * @param section the smaller side first, mm
   * @param length over the long points, mm
   * @param lowEnd how the lower or left end is cut
   * @param highEnd how the other end is
   * @param facet the facet they belong to, by name
   */
  public record Row(
      List<String> marks,
      String role,
      String section,
      double length,
      EndCut lowEnd,
      EndCut highEnd,
      String facet) {}

  private record Kind(String role, String section, String length, List<String> ends, String facet) {
    static Kind of(Member member, Section section, String facet) {
      List<String> ends =
          List.of(
              Decimal.of(member.lowEnd().tilt(), 2),
              Decimal.of(member.highEnd().tilt(), 2),
              Decimal.of(member.lowEnd().mitre(), 2),
              Decimal.of(member.highEnd().mitre(), 2));
      return new Kind(
          member.role().word(),
          SectionName.name(section),
          Decimal.of(member.length(), 1),
          ends,
          facet);
    }
  }

  /** Copies the rows. */
  public CutList {
    rows = List.copyOf(rows);
  }

  /** The sticks of a layout. */
  public static CutList of(CheckedLayout checked) {
    Layout layout = checked.layout();
    MemberSections sections = layout.sections();
    Map<Kind, List<Member>> kinds = new LinkedHashMap<>();
    for (FacetLayout facet : layout.facets()) {
      for (Member member : facet.members()) {
        Kind kind = Kind.of(member, sections.of(member), facet.facet().name());
        kinds.computeIfAbsent(kind, unseen -> new ArrayList<>()).add(member);
      }
    }
    for (PlacedMember placed : layout.standing()) {
      Kind kind = Kind.of(placed.member(), sections.of(placed.member()), SUPPORT);
      kinds.computeIfAbsent(kind, unseen -> new ArrayList<>()).add(placed.member());
    }
    List<Row> rows = new ArrayList<>();
    kinds.forEach(
        (kind, members) ->
            rows.add(
                new Row(
                    members.stream().map(Member::mark).toList(),
                    kind.role(),
                    kind.section(),
                    members.get(0).length(),
                    members.get(0).lowEnd(),
                    members.get(0).highEnd(),
                    kind.facet())));
    return new CutList(rows);
  }

  /**
   * The list for a spreadsheet; 0° is a square end. An end's angle is the blade's tilt; its mitre
   * is how far the cut slants across the side against the sheet.
   *
   * @param grade of the timber, in the merchant's words
   */
  public Table table(String grade) {
    return new Table("Cut list", COLUMNS, rows.stream().map(row -> cells(row, grade)).toList());
  }

  private static List<Cell> cells(Row row, String grade) {
    return List.of(
        Cell.of(String.join(" ", row.marks())),
        Cell.of(row.role()),
        Cell.of(row.section()),
        Cell.mm(row.length()),
        Cell.number(row.lowEnd().tilt(), 2),
        Cell.number(row.highEnd().tilt(), 2),
        Cell.of(row.marks().size()),
        Cell.of(row.facet()),
        Cell.number(row.lowEnd().mitre(), 2),
        Cell.number(row.highEnd().mitre(), 2),
        Cell.of(grade));
  }
}
