package plycrag.machining;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import plycrag.check.ApprovedLayout;
import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.layout.LaidSheet;
import plycrag.layout.Layout;
import plycrag.layout.MachinedHole;
import plycrag.params.MachineParameters;
import plycrag.params.MachineParameters.ZZero;
import plycrag.units.Decimal;

/** Drills every hole of a wall: one program a sheet and tool, tools numbered by diameter. */
public final class DrillPrograms {
  private final Layout layout;
  private final MachineParameters machine;
  private final double thickness;
  private final DrillHeights heights;

  private DrillPrograms(ApprovedLayout approved, MachineParameters machine) {
    this.layout = approved.layout();
    this.machine = machine;
    this.thickness = layout.wall().sheet().thickness();
    this.heights = DrillHeights.of(machine, thickness);
  }

  /** The programs, sheet by sheet; none for a sheet without holes. */
  public static List<DrillProgram> of(ApprovedLayout approved, MachineParameters machine) {
    return new DrillPrograms(approved, machine).programs();
  }

  private List<DrillProgram> programs() {
    List<Double> diameters =
        new ArrayList<>(
            new TreeSet<>(layout.holes().stream().map(MachinedHole::diameter).toList()));
    List<DrillProgram> programs = new ArrayList<>();
    for (LaidSheet sheet : layout.sheets()) {
      for (int tool = 1; tool <= diameters.size(); tool++) {
        double diameter = diameters.get(tool - 1);
        List<MachinedHole> holes =
            sheet.holes().stream().filter(hole -> hole.diameter() == diameter).toList();
        if (!holes.isEmpty()) {
          programs.add(program(sheet, tool, holes));
        }
      }
    }
    return programs;
  }

  private DrillProgram program(LaidSheet sheet, int tool, List<MachinedHole> holes) {
    return new DrillProgram(
        sheet.mark(), holes.get(0).side().word(), tool, remarks(sheet, tool, holes), moves(holes));
  }

  private List<String> remarks(LaidSheet sheet, int tool, List<MachinedHole> holes) {
    MachinedHole first = holes.get(0);
    return List.of(
        layout.wall().name(),
        "Sheet " + sheet.mark() + ", " + first.side().word() + " face up",
        "X0 Y0 lower left corner of the sheet",
        machine.zZero() == ZZero.SPOILBOARD ? "Z0 spoilboard" : "Z0 sheet top",
        "Sheet " + mm(thickness) + " thick, breakthrough " + mm(machine.breakthrough()),
        "Tool T" + tool + ", drill, diameter " + mm(first.diameter()),
        "Holes " + holes.size() + ", all lengths in millimetres",
        "Caution: hold the sheet down. Protect eyes and ears and lungs",
        "Caution: run above the work first");
  }

  private List<Move> moves(List<MachinedHole> holes) {
    Map<Xy, Double> bottoms = new HashMap<>();
    holes.forEach(hole -> bottoms.put(place(hole), heights.bottom(hole.depth(), thickness)));
    List<Xy> tour = HoleTour.of(holes.stream().map(DrillPrograms::place).toList());
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.RapidZ(heights.safe()));
    moves.add(new Move.SpindleOn(machine.spindleSpeed()));
    moves.add(new Move.Dwell(machine.dwell()));
    double approach = heights.safe();
    for (Xy place : tour) {
      moves.add(new Move.RapidXy(place.x(), place.y()));
      if (approach > heights.clear()) {
        moves.add(new Move.RapidZ(heights.clear()));
      }
      moves.add(new Move.Plunge(bottoms.get(place), machine.plungeFeed()));
      moves.add(new Move.RapidZ(heights.clear()));
      approach = heights.clear();
    }
    moves.add(new Move.RapidZ(heights.safe()));
    moves.add(new Move.SpindleOff());
    return moves;
  }

  private static Xy place(MachinedHole hole) {
    return new Xy(hole.x(), hole.y());
  }

  private static String mm(double length) {
    return Decimal.of(length, 3);
  }
}
