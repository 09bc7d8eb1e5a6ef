package plycrag.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plycrag.check.ApprovedLayout;
import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.document.ToolUse;
import plycrag.layout.Layout;
import plycrag.layout.sheets.CutOut;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.WorkedFace;
import plycrag.wall.machine.ChangePlace;
import plycrag.wall.machine.Controller.ToolChange;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/**
 * Makes every hole of a wall, and on request cuts its pieces out: one program a sheet and tool, or
 * one a sheet where the controller changes tools.
 */
public final class DrillPrograms {
  /** What is drilled is drilled before anything is cut. */
  private static final Comparator<Tool> ORDER =
      Comparator.comparing(Tool::kind).thenComparing(Tool::number);

  private final Layout layout;
  private final Machine machine;
  private final double thickness;
  private final DrillHeights heights;
  private final ProgramText text;
  private final HoleMoves holeMoves;
  private final ToolBox tools;
  private final OutlineMoves outlineMoves;
  private final Optional<Tool> cutter;
  private final Optional<Tool> engraver;

  /** What one program does. */
  private record Task(WorkedFace face, List<ToolWork> works) {}

  private DrillPrograms(ApprovedLayout approved) {
    this.layout = approved.layout();
    this.machine = layout.wall().machine();
    this.thickness = layout.wall().sheet().thickness();
    this.heights = DrillHeights.of(machine, thickness);
    this.text = new ProgramText(layout);
    this.holeMoves = new HoleMoves(heights, thickness, machine.equipment().controller().arcs());
    this.tools = ToolBox.of(machine, layout.bores());
    this.outlineMoves = new OutlineMoves(machine.work().routing(), heights, thickness);
    this.cutter = ToolBox.cutter(machine, thickness);
    this.engraver = ToolBox.engraver(machine);
  }

  /** The programs, sheet by sheet and face by face; none for a face on which nothing is done. */
  public static List<DrillProgram> of(ApprovedLayout approved) {
    DrillPrograms all = new DrillPrograms(approved);
    return all.layout.sheets().stream().flatMap(sheet -> all.programs(sheet).stream()).toList();
  }

  /** In the order in which they run: face by face, what cuts loose last. */
  private List<DrillProgram> programs(LaidSheet sheet) {
    List<Task> tasks =
        layout.faces().stream()
            .filter(face -> face.sheet().mark().equals(sheet.mark()))
            .flatMap(face -> tasks(face).stream())
            .toList();
    List<DrillProgram> programs = new ArrayList<>();
    for (Task task : tasks) {
      programs.add(program(task, new ProgramText.Turn(programs.size() + 1, tasks.size())));
    }
    return programs;
  }

  private List<Task> tasks(WorkedFace face) {
    List<ToolWork> works = works(face);
    if (works.isEmpty()) {
      return List.of();
    }
    return machine.equipment().controller().toolChange() == ToolChange.PROGRAM
        ? works.stream().map(work -> new Task(face, List.of(work))).toList()
        : List.of(new Task(face, works));
  }

  private List<ToolWork> works(WorkedFace face) {
    Map<Tool, List<MachinedHole>> byTool =
        face.sheet().holes().stream()
            .collect(
                Collectors.groupingBy(this::tool, () -> new TreeMap<>(ORDER), Collectors.toList()));
    engraver.filter(tool -> !face.marks().isEmpty()).ifPresent(tool -> byTool.put(tool, List.of()));
    List<ToolWork> works = new ArrayList<>();
    byTool.forEach(
        (tool, holes) -> {
          if (!cutter.equals(Optional.of(tool))) {
            works.add(work(tool, holes, face));
          }
        });
    cutter
        .map(tool -> work(tool, byTool.getOrDefault(tool, List.of()), face))
        .ifPresent(works::add);
    return works.stream().filter(work -> !work.cuts().isEmpty()).toList();
  }

  private Tool tool(MachinedHole hole) {
    double depth = heights.top() - heights.bottom(hole.bore().depth(), thickness);
    return hole.tool(tools, depth).orElseThrow();
  }

  private ToolWork work(Tool tool, List<MachinedHole> holes, WorkedFace face) {
    SheetOrigin origin = SheetOrigin.of(machine.zero().corner(), face.sheet().stock());
    ToolUse use = new ToolUse(tool.number(), text.tool(tool), tool.drive().speed(), holes.size());
    LiftedOver lifted =
        new LiftedOver(machine.equipment().keepOuts(), tool.diameter() / 2, heights.safe(), origin);
    List<Move> cuts =
        new ArrayList<>(holeMoves.of(tool, holes, origin, lifted.metric(heights.clear())));
    if (face.isLast() && cutter.equals(Optional.of(tool))) {
      cuts.addAll(
          outlineMoves.of(tool, face.sheet(), CutOut.of(face.sheet(), layout.offcuts()), origin));
    }
    if (engraver.equals(Optional.of(tool))) {
      double depth = machine.work().marks().orElseThrow().depth();
      cuts.addAll(new MarkMoves(tool, heights, depth).of(face.marks(), origin));
    }
    int recesses = (int) holes.stream().filter(hole -> hole.kind() == Kind.RECESS).count();
    return new ToolWork(use, recesses, lifted.of(cuts));
  }

  private DrillProgram program(Task task, ProgramText.Turn turn) {
    return new DrillProgram(
        task.face().sheet().mark(),
        task.face().sheet().faceUp().word(),
        turn.place(),
        text.remarks(task.face(), task.works(), turn),
        moves(task.works()),
        task.works().stream().map(ToolWork::use).toList());
  }

  private List<Move> moves(List<ToolWork> works) {
    List<Move> moves = new ArrayList<>();
    boolean changes = machine.equipment().controller().toolChange() != ToolChange.PROGRAM;
    for (ToolWork work : works) {
      if (changes) {
        moves.addAll(change(work.use()));
      }
      moves.add(new Move.RapidZ(heights.safe()));
      moves.add(new Move.SpindleOn(work.use().speed()));
      moves.add(new Move.Dwell(machine.spindle().dwell()));
      moves.addAll(work.cuts());
      moves.add(new Move.RapidZ(heights.safe()));
      moves.add(new Move.SpindleOff());
    }
    machine
        .equipment()
        .controller()
        .frame()
        .park()
        .ifPresent(park -> moves.add(new Move.RapidXy(park.x(), park.y())));
    return moves;
  }

  /** Up, and to where a person gets at the spindle, or where the machine is to change its tool. */
  private List<Move> change(ToolUse use) {
    ChangePlace place = machine.equipment().controller().changePlace();
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.RapidZ(heights.change()));
    boolean byHand = machine.equipment().controller().toolChange() == ToolChange.PAUSE;
    if (byHand || place.x().isPresent() || place.y().isPresent()) {
      moves.add(new Move.RapidXy(place.x().orElse(0.0), place.y().orElse(0.0)));
    }
    moves.add(new Move.ToolChange(use.number(), use.tool() + text.afterChange()));
    return moves;
  }
}
