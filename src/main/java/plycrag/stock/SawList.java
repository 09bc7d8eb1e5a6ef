package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.geometry.Trig;
import plycrag.layout.FacetLayout;
import plycrag.layout.Member;
import plycrag.layout.Piece;

/**
 * Every cut for which the saw is tilted: bevelled edges of sheets, slanting ends of timber, and the
 * rips that let plates at a fold lie flat against their sheets.
 */
public record SawList(List<Cut> cuts) {
  private static final List<String> COLUMNS =
      List.of("part", "cut", "angle_deg", "longer_side", "difference_mm", "facet");

  /** An angle below this is square, degrees. */
  private static final double SQUARE = 0.005;

  /**
   * A cut.
   *
   * @param part the mark of what is cut
   * @param what which edge or end, in words
   * @param angle from square, degrees
   * @param longer the side that stays longer, in words
   * @param difference between the two sides, mm
   * @param facet the facet that the part belongs to, by name
   */
  public record Cut(
      String part, String what, double angle, String longer, double difference, String facet) {}

  /** Copies the cuts. */
  public SawList {
    cuts = List.copyOf(cuts);
  }

  /** The cuts of a layout, facet by facet, sheets before timber. */
  public static SawList of(CheckedLayout checked) {
    double thickness = checked.layout().wall().sheet().thickness();
    double breadth = checked.layout().wall().frame().breadth();
    List<Cut> cuts = new ArrayList<>();
    for (FacetLayout facet : checked.layout().facets()) {
      String name = facet.facet().name();
      facet.pieces().forEach(piece -> addEdges(piece, thickness, name, cuts));
      facet.members().forEach(member -> addEnds(member, breadth, name, cuts));
    }
    return new SawList(cuts);
  }

  private static void addEdges(Piece piece, double thickness, String facet, List<Cut> cuts) {
    Envelope front = piece.box();
    Envelope back = piece.back().getEnvelopeInternal();
    double low = Trig.angle(front.getMinY() - back.getMinY(), thickness);
    double high = Trig.angle(back.getMaxY() - front.getMaxY(), thickness);
    add(new Slant(piece.mark(), "lower edge", low, thickness), facet, cuts);
    add(new Slant(piece.mark(), "upper edge", high, thickness), facet, cuts);
  }

  private static void addEnds(Member member, double breadth, String facet, List<Cut> cuts) {
    String mark = member.mark();
    add(new Slant(mark, "lower end", member.lowEnd(), member.depth()), facet, cuts);
    add(new Slant(mark, "upper end", member.highEnd(), member.depth()), facet, cuts);
    double rip = member.rip();
    if (Math.abs(rip) > SQUARE) {
      String longer = rip > 0 ? "upper face" : "lower face";
      double difference = breadth * Trig.tan(Math.abs(rip));
      cuts.add(new Cut(mark, "rip along the sheet", Math.abs(rip), longer, difference, facet));
    }
  }

  private record Slant(String mark, String what, double angle, double through) {}

  private static void add(Slant slant, String facet, List<Cut> cuts) {
    double angle = Math.abs(slant.angle());
    if (angle > SQUARE) {
      String longer = slant.angle() > 0 ? "back" : "front";
      double difference = slant.through() * Trig.tan(angle);
      cuts.add(new Cut(slant.mark(), slant.what(), angle, longer, difference, facet));
    }
  }

  /** The list for a spreadsheet. */
  public Table table() {
    return new Table("Saw list", COLUMNS, cuts.stream().map(SawList::cells).toList());
  }

  private static List<Cell> cells(Cut cut) {
    return List.of(
        Cell.of(cut.part()),
        Cell.of(cut.what()),
        Cell.number(cut.angle(), 2),
        Cell.of(cut.longer()),
        Cell.mm(cut.difference()),
        Cell.of(cut.facet()));
  }
}
