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
import plycrag.params.ControllerParameters.ToolChange;
import plycrag.params.MachineParameters;

/**
 * Drills every hole of a wall: one program a sheet and tool, or one a sheet where the controller
 * changes tools; tools numbered by diameter.
 */
public final class DrillPrograms {
  private final Layout layout;
  private final MachineParameters machine;
  private final double thickness;
  private final DrillHeights heights;
  private final ProgramText text;

  private DrillPrograms(ApprovedLayout approved, MachineParameters machine) {
    this.layout = approved.layout();
    this.machine = machine;
    this.thickness = layout.wall().sheet().thickness();
    this.heights = DrillHeights.of(machine, thickness);
    this.text = new ProgramText(layout.wall().name(), machine, thickness);
  }

  /** The programs, sheet by sheet; none for a sheet without holes. */
  public static List<DrillProgram> of(ApprovedLayout approved, MachineParameters machine) {
    DrillPrograms all = new DrillPrograms(approved, machine);
    return all.layout.sheets().stream().flatMap(sheet -> all.programs(sheet).stream()).toList();
  }

  private List<DrillProgram> programs(LaidSheet sheet) {
    List<ToolWork> works = works(sheet);
    if (works.isEmpty()) {
      return List.of();
    }
    return machine.controller().toolChange() == ToolChange.PROGRAM
        ? works.stream().map(work -> program(sheet, List.of(work))).toList()
        : List.of(program(sheet, works));
  }

  private List<ToolWork> works(LaidSheet sheet) {
    List<Double> diameters =
        new ArrayList<>(
            new TreeSet<>(layout.holes().stream().map(MachinedHole::diameter).toList()));
    List<ToolWork> works = new ArrayList<>();
    for (int tool = 1; tool <= diameters.size(); tool++) {
      double diameter = diameters.get(tool - 1);
      List<MachinedHole> holes =
          sheet.holes().stream().filter(hole -> hole.diameter() == diameter).toList();
      if (!holes.isEmpty()) {
        String words = text.drill(tool, diameter);
        List<Move> cuts = drilled(holes, SheetOrigin.of(machine.origin(), sheet.stock()));
        works.add(new ToolWork(tool, words, machine.spindleSpeed(), holes.size(), cuts));
      }
    }
    return works;
  }

  private DrillProgram program(LaidSheet sheet, List<ToolWork> works) {
    return new DrillProgram(
        sheet.mark(),
        sheet.holes().get(0).side().word(),
        works.get(0).number(),
        text.remarks(sheet, works),
        moves(works));
  }

  private List<Move> moves(List<ToolWork> works) {
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.RapidZ(heights.safe()));
    for (ToolWork work : works) {
      if (machine.controller().toolChange() != ToolChange.PROGRAM) {
        moves.add(new Move.ToolChange(work.number(), work.tool()));
        moves.add(new Move.RapidZ(heights.safe()));
      }
      moves.add(new Move.SpindleOn(work.speed()));
      moves.add(new Move.Dwell(machine.dwell()));
      moves.addAll(work.cuts());
      moves.add(new Move.RapidZ(heights.safe()));
      moves.add(new Move.SpindleOff());
    }
    return moves;
  }

  private List<Move> drilled(List<MachinedHole> holes, SheetOrigin origin) {
    Map<Xy, Double> bottoms = new HashMap<>();
    holes.forEach(
        hole -> bottoms.put(place(hole, origin), heights.bottom(hole.depth(), thickness)));
    List<Xy> tour = HoleTour.of(holes.stream().map(hole -> place(hole, origin)).toList());
    return tour.stream()
        .<Move>map(
            place ->
                new Move.DrillCycle(
                    place, heights.clear(), bottoms.get(place), 0, machine.plungeFeed()))
        .toList();
  }

  private static Xy place(MachinedHole hole, SheetOrigin origin) {
    return origin.from(hole.x(), hole.y());
  }
}
