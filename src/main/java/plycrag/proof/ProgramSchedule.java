package plycrag.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FreeSides;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.WorkedFace;
import plycrag.wall.machine.Controller.ToolChange;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/**
 * Which programs every sheet takes, in the order in which they run: face by face; drills first,
 * then by kind and number; last what cuts pieces out.
 */
final class ProgramSchedule {
  private final Layout layout;
  private final Machine machine;
  private final double thickness;
  private final ToolBox tools;
  private final Optional<Tool> cutter;

  ProgramSchedule(Layout layout) {
    this.layout = layout;
    this.machine = layout.wall().machine();
    this.thickness = layout.wall().sheet().thickness();
    this.tools = ToolBox.of(machine, layout.bores());
    this.cutter = ToolBox.cutter(machine, thickness);
  }

  /**
   * A program.
   *
   * @param face that it works
   * @param tools in the order in which it takes them
   */
  record Run(WorkedFace face, List<Tool> tools) {
    Run {
      tools = List.copyOf(tools);
    }
  }

  /** All runs of a sheet. */
  List<Run> of(String sheet) {
    return layout.faces().stream()
        .filter(face -> face.sheet().mark().equals(sheet))
        .flatMap(face -> runs(face).stream())
        .toList();
  }

  /** How many programs the sheets before one take. */
  int before(String sheet) {
    int before = 0;
    for (LaidSheet other : layout.sheets()) {
      if (other.mark().equals(sheet)) {
        return before;
      }
      before += of(other.mark()).size();
    }
    throw new IllegalArgumentException("no sheet " + sheet);
  }

  private List<Run> runs(WorkedFace face) {
    List<Tool> inOrder = inOrder(face);
    boolean several = machine.equipment().controller().toolChange() != ToolChange.PROGRAM;
    if (several) {
      return inOrder.isEmpty() ? List.of() : List.of(new Run(face, inOrder));
    }
    return inOrder.stream().map(tool -> new Run(face, List.of(tool))).toList();
  }

  private List<Tool> inOrder(WorkedFace face) {
    List<Tool> inOrder = new ArrayList<>();
    Stream.concat(
            forHoles(face),
            ToolBox.engraver(machine).filter(tool -> !face.marks().isEmpty()).stream())
        .filter(tool -> !cutter.equals(Optional.of(tool)))
        .distinct()
        .sorted(Comparator.comparing(Tool::kind).thenComparing(Tool::number))
        .forEach(inOrder::add);
    cutter.filter(tool -> makesLast(tool, face)).ifPresent(inOrder::add);
    return inOrder;
  }

  private Stream<Tool> forHoles(WorkedFace face) {
    return face.sheet().holes().stream().flatMap(hole -> tool(hole).stream());
  }

  /** What makes a hole. */
  Optional<Tool> tool(MachinedHole hole) {
    return hole.tool(tools, reach(hole));
  }

  /** On a face that is not cut out yet, what cuts outlines may still make holes. */
  private boolean makesLast(Tool tool, WorkedFace face) {
    return (face.isLast() && isCut(face.sheet())) || forHoles(face).anyMatch(tool::equals);
  }

  /** Whether anything of a sheet is cut out: a piece may fill it. */
  private boolean isCut(LaidSheet sheet) {
    if (!layout.offcuts().of(sheet).isEmpty()) {
      return true;
    }
    for (LaidPiece laid : sheet.pieces()) {
      Polygon kept = laid.kept();
      if (!FreeSides.of(kept, sheet.area()).isEmpty() || !Shapes.openings(kept).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** How far a tool goes below the sheet's top, mm. */
  double reach(MachinedHole hole) {
    boolean through = hole.bore().depth() >= thickness;
    return hole.bore().depth() + (through ? machine.heights().breakthrough() : 0);
  }
}
