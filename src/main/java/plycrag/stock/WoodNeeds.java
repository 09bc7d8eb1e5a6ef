package plycrag.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plycrag.layout.Layout;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Gusset;
import plycrag.layout.sheets.AlikeSheets;
import plycrag.layout.sheets.CoverStrip;
import plycrag.layout.sheets.LaidGusset;
import plycrag.layout.sheets.OffcutParts;
import plycrag.prices.Article;
import plycrag.solve.fixing.FacePlace;
import plycrag.solve.nest.SheetKind;
import plycrag.stock.Need.Amount;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.buying.MaterialWishes;
import plycrag.wall.buying.MaterialWishes.SheetWish;
import plycrag.wall.buying.MaterialWishes.TimberWish;
import plycrag.wall.buying.Section;

/** The sheets and sticks of a wall. */
final class WoodNeeds {
  private static final double SQUARE_METRE = 1e6;
  private static final String AT_HAND = ", at hand";

  private final Layout layout;
  private final StickPlan plan;
  private final MaterialWishes buying;
  private final Tape tape;
  private final OffcutParts offcuts;
  private final List<Need> needs = new ArrayList<>();

  WoodNeeds(Layout layout, StickPlan plan, MaterialWishes buying) {
    this.layout = layout;
    this.plan = plan;
    this.buying = buying;
    this.tape = layout.wall().tape();
    this.offcuts = layout.offcuts();
  }

  List<Need> needs() {
    addSheets();
    addCoverStrips();
    addGussets();
    plan.sections().forEach(this::addTimber);
    return needs;
  }

  private void addSheets() {
    Map<SheetKind, Long> kinds = new LinkedHashMap<>();
    layout.sheets().forEach(sheet -> kinds.merge(sheet.stock().kind(), 1L, Long::sum));
    kinds.forEach((kind, count) -> addSheets(kind, count.intValue()));
    if (offcuts.furtherSheets() > 0) {
      addFurther();
    }
  }

  private void addSheets(SheetKind kind, int count) {
    double thickness = layout.wall().sheet().thickness();
    String what = "structural plywood, " + tape.size(thickness) + " thick as measured";
    String size = size(kind.length(), kind.width());
    if (kind.isAtHand()) {
      add("sheets", what + AT_HAND, size, count, Sourcing.atHand(), "");
      return;
    }
    Sourcing sourcing =
        Sourcing.of(Article.SHEET, kind.length(), kind.width(), thickness)
            .weighing(UnitMass.plywood(kind.length(), kind.width(), thickness));
    SheetWish wish = buying.sheets();
    String note =
        wish.bond()
            + "; "
            + wish.face()
            + "; stamped as structural; no other thickness without building anew: holes would move"
            + alike(kind);
    add("sheets", what, size, count, sourcing, note);
  }

  /** For what no offcut takes. */
  private void addFurther() {
    double length = layout.wall().sheet().length();
    double width = layout.wall().sheet().width();
    double thickness = layout.wall().sheet().thickness();
    Sourcing sourcing =
        Sourcing.of(Article.SHEET, length, width, thickness)
            .weighing(UnitMass.plywood(length, width, thickness));
    String what = "plywood for what no offcut takes";
    add("sheets", what, size(length, width), offcuts.furtherSheets(), sourcing, smaller());
  }

  /** How little of further sheets is needed may make a smaller one do. */
  private String smaller() {
    double area =
        offcuts.parts().stream()
            .filter(part -> part.sheet().isEmpty())
            .mapToDouble(part -> part.place().getArea())
            .sum();
    return "for "
        + Decimal.of(area / SQUARE_METRE, 2)
        + " m² in all; a smaller panel of the same thickness does if it takes the parts";
  }

  /** Which of a kind are laid and drilled the same; nothing if none are. */
  private String alike(SheetKind kind) {
    AlikeSheets sheets = new AlikeSheets(layout.sheets());
    return layout.sheets().stream()
        .filter(sheet -> sheet.stock().kind().equals(kind))
        .filter(sheet -> sheets.earlier(sheet).isEmpty())
        .map(sheets::marks)
        .filter(marks -> marks.size() > 1)
        .map(marks -> "; " + marks.size() + " made alike: " + String.join(" ", marks))
        .collect(Collectors.joining());
  }

  /** A strip over every fold whose square-cut sheets leave a gap in the climbing face. */
  private void addCoverStrips() {
    for (CoverStrip strip : offcuts.strips()) {
      String what =
          "cover strip "
              + strip.mark()
              + " over the gap of "
              + tape.size(strip.gap())
              + " "
              + strip.over()
              + ", "
              + strip.from();
      add("sheets", what, size(strip.length(), strip.width()), 1, Sourcing.atHand(), "");
    }
  }

  /** Over members that no bracket and no strap holds. */
  private void addGussets() {
    for (LaidGusset laid : offcuts.gussets()) {
      Gusset gusset = laid.gusset();
      String over = String.join(", ", gusset.members());
      String what = "gusset " + gusset.mark() + " over " + over + ", " + laid.from();
      FacePlace size = gusset.fit().size();
      add("sheets", what, size(size.along(), size.across()), 1, Sourcing.atHand(), "");
    }
  }

  private void addTimber(SectionPlan sticks) {
    Section section = sticks.section();
    Map<Double, Integer> bought = new TreeMap<>();
    Map<Double, Integer> atHand = new TreeMap<>();
    for (Stick stick : sticks.sticks()) {
      (stick.isAtHand() ? atHand : bought).merge(stick.length(), 1, Integer::sum);
    }
    bought.forEach((length, count) -> addSticks(section, "", length, count));
    atHand.forEach((length, count) -> addSticks(section, AT_HAND, length, count));
    for (Member member : sticks.tooLong()) {
      addSticks(section, ", longer than is sold", member.length(), 1);
    }
  }

  private static Sourcing timber(Section section, double length) {
    return Sourcing.of(Article.TIMBER, section.breadth(), section.depth(), length)
        .weighing(UnitMass.timber(section.breadth(), section.depth(), length));
  }

  private void addSticks(Section section, String which, double length, int count) {
    TimberWish wish = buying.timber();
    boolean ofFrame = section.equals(layout.wall().frame().section());
    String note =
        wish.grade()
            + "; "
            + wish.treatment()
            + "; "
            + wish.dryness()
            + "; no other section without building anew: "
            + (ofFrame ? "holes would move" : "lengths would change");
    String size = size(section.breadth(), section.depth());
    String what = "structural timber, " + size + " actual" + which;
    Sourcing sourcing = which.equals(AT_HAND) ? Sourcing.atHand() : timber(section, length);
    add("timber", what, tape.size(length), count, sourcing, note);
  }

  private void add(
      String group, String what, String size, int count, Sourcing sourcing, String note) {
    needs.add(new Need(group, what, size, Amount.pieces(count), sourcing, note));
  }

  private String size(double one, double other) {
    return tape.bareSize(one) + " x " + tape.size(other);
  }
}
