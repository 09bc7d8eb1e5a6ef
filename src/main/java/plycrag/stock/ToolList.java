package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.units.Decimal;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;
import plycrag.wall.Inserts.Fixing;
import plycrag.wall.JointFasteners;
import plycrag.wall.Screws;
import plycrag.wall.Wall;

/** The tools that the work takes, bits with their sizes. */
public final class ToolList {
  private static final List<String> COLUMNS = List.of("tool", "size", "for");

  /** More than the bolt, mm: the medium hole of ISO 273 for M10. */
  private static final double BOLT_PLAY = 1;

  private final Layout layout;
  private final Wall wall;
  private final Tape tape;
  private final List<List<Cell>> rows = new ArrayList<>();

  private ToolList(Layout layout) {
    this.layout = layout;
    this.wall = layout.wall();
    this.tape = wall.tape();
  }

  /** The list, in the order of the work. */
  public static Table of(CheckedLayout checked) {
    ToolList list = new ToolList(checked.layout());
    list.addSaws(SawList.of(checked));
    list.addBits();
    list.addRest();
    return new Table("Tools", COLUMNS, list.rows);
  }

  private void addSaws(SawList cuts) {
    double steepest = cuts.cuts().stream().mapToDouble(SawList.Cut::angle).max().orElse(0);
    add("tape and square", "", "marking out");
    if (steepest > 0) {
      add("saw that tilts", Decimal.of(steepest, 1) + "°", "bevels, slanting ends and rips");
    } else {
      add("saw", "", "sheets and timber; every cut is square");
    }
  }

  private void addBits() {
    Screws screw = wall.screws();
    ScrewDrilling holes = ScrewDrilling.of(screw);
    add("bit", tape.size(wall.inserts().body().hole()), "inserts; or the router program");
    addHoles(holes, screwName(screw.diameter()), "sheet to frame", "in the sheet");
    JointFasteners joints = wall.joints();
    Map<JointHardware.Kind, Integer> counts = JointHardware.counts(layout);
    if (counts.containsKey(JointHardware.Kind.SCREW)) {
      ScrewDrilling side = ScrewDrilling.of(joints.screws().diameter(), true);
      addHoles(
          side, screwName(joints.screws().diameter()), "member to member", "in the first member");
    }
    for (SteelCounts.Screw each : GussetList.screws(layout.fixings().gussets()).keySet()) {
      ScrewDrilling through = ScrewDrilling.forGusset(each.diameter());
      addHoles(through, screwName(each.diameter()), "gusset to frame", "in the gusset");
    }
    for (SteelCounts.Screw steel : SteelCounts.of(layout).screws().keySet()) {
      double pilot = ScrewDrilling.of(steel.diameter(), true).pilot();
      if (pilot > 0) {
        String what = "pilot holes in softwood, " + screwName(steel.diameter());
        add("bit", tape.size(pilot), what + ", brackets and straps");
      }
    }
    if (counts.containsKey(JointHardware.Kind.BOLT)) {
      double hole = joints.bolts().diameter() + BOLT_PLAY;
      add(
          "bit",
          tape.size(hole),
          "bolts of " + tape.size(joints.bolts().diameter()) + " in timber");
      add("spanner and socket", "for " + tape.size(joints.bolts().diameter()), "those bolts");
    }
  }

  private void addHoles(ScrewDrilling holes, String screw, String joint, String where) {
    add(
        "bit",
        tape.size(holes.clearance()),
        "clearance holes " + where + ", " + screw + ", " + joint);
    if (holes.pilot() > 0) {
      add("bit", tape.size(holes.pilot()), "pilot holes in softwood, " + screw + ", " + joint);
    }
  }

  /** In inch files with the number by which the screw is called. */
  private String screwName(double diameter) {
    String size = "screws of " + tape.size(diameter);
    return Gauge.name(diameter)
        .filter(name -> tape.unit() == LengthUnit.IN)
        .map(name -> size + " (" + name + ")")
        .orElse(size);
  }

  private void addRest() {
    boolean screwed = wall.inserts().fastening().kind() == Fixing.SCREW_ON;
    add("countersink", "", "heads of screws flush, not deeper");
    add("driver", "", "screws of sheets, frame and brackets");
    add(
        screwed ? "small driver bit" : "hammer",
        "",
        screwed ? "screws of the inserts' flanges" : "inserts, struck in from the back");
    add("clamps and a backing board", "", "clean holes, frames held square");
    add("sanding block, brush or roller", "", "edges, faces");
    add("eye and ear protection, dust mask", "", "everybody who saws, drills or sands");
  }

  private void add(String tool, String size, String purpose) {
    rows.add(List.of(Cell.of(tool), Cell.of(size), Cell.of(purpose)));
  }
}
