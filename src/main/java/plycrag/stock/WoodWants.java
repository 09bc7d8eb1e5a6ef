package plycrag.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plycrag.layout.AlikeSheets;
import plycrag.layout.CoverStrip;
import plycrag.layout.CoverStrips;
import plycrag.layout.Layout;
import plycrag.layout.Member;
import plycrag.layout.nest.SheetKind;
import plycrag.params.Article;
import plycrag.params.BuyingParameters;
import plycrag.params.BuyingParameters.SheetWish;
import plycrag.params.BuyingParameters.TimberWish;
import plycrag.params.FrameParameters;
import plycrag.stock.Want.Amount;
import plycrag.units.Tape;

/** The sheets and sticks of a wall. */
final class WoodWants {
  private final Layout layout;
  private final StickPlan plan;
  private final BuyingParameters buying;
  private final Tape tape;
  private final CoverStrips strips;
  private final List<Want> wants = new ArrayList<>();

  WoodWants(Layout layout, StickPlan plan, BuyingParameters buying) {
    this.layout = layout;
    this.plan = plan;
    this.buying = buying;
    this.tape = layout.wall().tape();
    this.strips = layout.coverStrips();
  }

  List<Want> wants() {
    addSheets();
    addCoverStrips();
    addTimber();
    return wants;
  }

  private void addSheets() {
    Map<SheetKind, Long> kinds = new LinkedHashMap<>();
    layout.sheets().forEach(sheet -> kinds.merge(sheet.stock().kind(), 1L, Long::sum));
    kinds.forEach((kind, count) -> addSheets(kind, count.intValue()));
    if (strips.furtherSheets() > 0) {
      addFurther();
    }
  }

  private void addSheets(SheetKind kind, int count) {
    double thickness = layout.wall().sheet().thickness();
    String what = "structural plywood, " + tape.size(thickness) + " thick as measured";
    String size = size(kind.length(), kind.width());
    if (kind.isAtHand()) {
      add("sheets", what + ", at hand", size, count, Supply.atHand(), "");
      return;
    }
    Supply supply =
        Supply.of(Article.SHEET, kind.length(), kind.width(), thickness)
            .weighing(Bulk.plywood(kind.length(), kind.width(), thickness));
    SheetWish wish = buying.sheets();
    String note =
        wish.bond()
            + "; "
            + wish.face()
            + "; stamped as structural; no other thickness without building anew: holes would move"
            + alike(kind);
    add("sheets", what, size, count, supply, note);
  }

  /** For what no offcut takes. */
  private void addFurther() {
    double length = layout.wall().sheet().length();
    double width = layout.wall().sheet().width();
    double thickness = layout.wall().sheet().thickness();
    Supply supply =
        Supply.of(Article.SHEET, length, width, thickness)
            .weighing(Bulk.plywood(length, width, thickness));
    String what = "plywood for cover strips that no offcut takes";
    add("sheets", what, size(length, width), strips.furtherSheets(), supply, "");
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
    for (CoverStrip strip : strips.strips()) {
      String what =
          "cover strip "
              + strip.mark()
              + " over the gap of "
              + tape.size(strip.gap())
              + " "
              + strip.over()
              + ", "
              + strip.from();
      add("sheets", what, size(strip.length(), strip.width()), 1, Supply.atHand(), "");
    }
  }

  private void addTimber() {
    Map<Double, Integer> bought = new TreeMap<>();
    Map<Double, Integer> atHand = new TreeMap<>();
    for (Stick stick : plan.sticks()) {
      (stick.isAtHand() ? atHand : bought).merge(stick.length(), 1, Integer::sum);
    }
    bought.forEach((length, count) -> addSticks("", length, count, timber(length)));
    atHand.forEach((length, count) -> addSticks(", at hand", length, count, Supply.atHand()));
    for (Member member : plan.tooLong()) {
      addSticks(", longer than is sold", member.length(), 1, timber(member.length()));
    }
  }

  private Supply timber(double length) {
    FrameParameters frame = layout.wall().frame();
    return Supply.of(Article.TIMBER, frame.breadth(), frame.depth(), length)
        .weighing(Bulk.timber(frame.breadth(), frame.depth(), length));
  }

  private void addSticks(String which, double length, int count, Supply supply) {
    FrameParameters frame = layout.wall().frame();
    TimberWish wish = buying.timber();
    String section = size(frame.breadth(), frame.depth());
    String note =
        wish.grade()
            + "; "
            + wish.treatment()
            + "; "
            + wish.dryness()
            + "; no other section without building anew: holes would move";
    String what = "structural timber, " + section + " actual" + which;
    add("timber", what, tape.size(length), count, supply, note);
  }

  private void add(String group, String what, String size, int count, Supply supply, String note) {
    wants.add(new Want(group, what, size, Amount.pieces(count), supply, note));
  }

  private String size(double one, double other) {
    return tape.bareSize(one) + " x " + tape.size(other);
  }
}
