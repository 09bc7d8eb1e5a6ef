package plycrag.stock;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.geometry.Shapes;
import plycrag.layout.Joint;
import plycrag.layout.Layout;
import plycrag.params.InsertParameters;
import plycrag.params.InsertParameters.Fixing;
import plycrag.params.JointParameters;
import plycrag.params.ScrewParameters;
import plycrag.params.SheetParameters;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.Wall;

/** What to buy, as merchants sell it. Holds what the wall takes, without spares. */
public final class ShoppingList {
  private static final List<String> COLUMNS =
      List.of("group", "article", "size", "quantity", "unit");

  /** How far a cover strip lies on either sheet (common practice, no source), mm. */
  private static final double STRIP = 30;

  private final Layout layout;
  private final StickPlan plan;
  private final List<List<Cell>> rows = new ArrayList<>();

  private ShoppingList(Layout layout, StickPlan plan) {
    this.layout = layout;
    this.plan = plan;
  }

  /** The list: sheets, timber, inserts, screws, the hardware of the joints. */
  public static Table of(CheckedLayout checked, StickPlan plan) {
    ShoppingList list = new ShoppingList(checked.layout(), plan);
    list.addSheets();
    list.addCoverStrips();
    list.addTimber();
    list.addInserts();
    list.addScrews();
    list.addHardware();
    return new Table("Shopping list", COLUMNS, list.rows);
  }

  private Wall wall() {
    return layout.wall();
  }

  private void addSheets() {
    SheetParameters sheet = wall().sheet();
    String size = size(sheet.length(), sheet.width());
    String article = "structural plywood, " + exact(sheet.thickness()) + " thick as measured";
    add("sheets", article, size, layout.sheets().size());
  }

  /** A strip over every fold whose square-cut sheets leave a gap in the climbing face. */
  private void addCoverStrips() {
    for (Facet facet : wall().facets()) {
      for (Fold fold : facet.folds()) {
        double gap = wall().foldGap(fold);
        boolean once = fold.place() == Fold.Place.ABOVE || fold.place() == Fold.Place.RIGHT;
        if (gap > 0 && once) {
          String where = fold.isCorner() ? " to the right of facet " : " above facet ";
          String article =
              "cover strip from an offcut, over the gap of " + exact(gap) + where + facet.name();
          double length = Shapes.outerEdges(facet.boundary()).get(fold.side()).getLength();
          add("sheets", article, size(length, wall().tape().snapUp(2 * STRIP + gap)), 1);
        }
      }
    }
  }

  private void addTimber() {
    Map<Double, Integer> bought = new TreeMap<>();
    Map<Double, Integer> atHand = new TreeMap<>();
    for (Stick stick : plan.sticks()) {
      (stick.isAtHand() ? atHand : bought).merge(stick.length(), 1, Integer::sum);
    }
    String section = size(wall().frame().breadth(), wall().frame().depth());
    String article = "structural timber, " + section + " actual";
    bought.forEach((length, count) -> add("timber", article, exact(length), count));
    atHand.forEach((length, count) -> add("timber", article + ", at hand", exact(length), count));
    plan.tooLong()
        .forEach(
            member -> add("timber", article + ", longer than is sold", exact(member.length()), 1));
  }

  private void addInserts() {
    InsertParameters insert = wall().inserts();
    int count = layout.inserts().size();
    String size =
        "hole "
            + exact(insert.hole())
            + ", flange "
            + exact(insert.flange())
            + ", barrel "
            + exact(insert.barrel());
    boolean screwed = insert.kind() == Fixing.SCREW_ON;
    String article = "threaded insert, " + (screwed ? "screwed on" : "hammered in");
    add("inserts", article, size, count);
    int screws = screwed ? count * insert.flangeScrews() : 0;
    double most = wall().sheet().thickness() - wall().clearance().barrelToFace();
    add("inserts", "screw for flanges", "at most " + exact(most) + " long", screws);
  }

  private void addScrews() {
    ScrewParameters screw = wall().screws();
    int count = layout.screws().size();
    String size = size(screw.diameter(), screw.length());
    add("screws", "countersunk wood screw, sheet to frame", size, count);
  }

  private void addHardware() {
    Map<Hardware.Kind, Integer> counts = new EnumMap<>(Hardware.Kind.class);
    int bracketScrews = 0;
    for (Joint joint : layout.joints()) {
      Hardware hardware = Hardware.of(joint, wall());
      counts.merge(hardware.kind(), hardware.count(), Integer::sum);
      if (hardware.kind().hasScrews()) {
        bracketScrews += hardware.count() * wall().joints().bracketScrews();
      }
    }
    JointParameters joints = wall().joints();
    int bolts = counts.getOrDefault(Hardware.Kind.BOLT, 0);
    double through = 2 * wall().frame().breadth();
    String bolt = exact(joints.boltDiameter());
    add("hardware", "angle bracket", "", counts.getOrDefault(Hardware.Kind.BRACKET, 0));
    add("hardware", "strap", "", counts.getOrDefault(Hardware.Kind.STRAP, 0));
    add("hardware", "screw for brackets, as their maker says", "", bracketScrews);
    add("hardware", "bolt through " + exact(through) + " of timber", bolt, bolts);
    add("hardware", "washer for timber", bolt, 2 * bolts);
    add("hardware", "nut", bolt, bolts);
    add(
        "hardware",
        "structural screw, member to member",
        size(joints.screwDiameter(), joints.screwLength()),
        counts.getOrDefault(Hardware.Kind.SCREW, 0));
  }

  private void add(String group, String article, String size, int count) {
    if (count > 0) {
      rows.add(
          List.of(
              Cell.of(group), Cell.of(article), Cell.of(size), Cell.of(count), Cell.of("piece")));
    }
  }

  private String size(double one, double other) {
    return wall().tape().bareSize(one) + " x " + exact(other);
  }

  private String exact(double length) {
    return wall().tape().size(length);
  }
}
