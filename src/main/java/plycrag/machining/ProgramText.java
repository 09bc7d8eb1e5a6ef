package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plycrag.layout.Layout;
import plycrag.layout.Revision;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.WorkedFace;
import plycrag.units.Decimal;
import plycrag.wall.Wall;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Machine.ZZero;
import plycrag.wall.machine.ProgramFrame.WorkOffset;
import plycrag.wall.machine.Routing;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** What a program tells the person at the machine, lengths in the program's unit. */
final class ProgramText {
  private final Wall wall;
  private final String revision;
  private final Machine machine;
  private final double thickness;

  /** Tells about one wall's programs. */
  ProgramText(Layout layout) {
    this.wall = layout.wall();
    this.revision = Revision.of(layout);
    this.machine = layout.wall().machine();
    this.thickness = layout.wall().sheet().thickness();
  }

  /**
   * When a program runs.
   *
   * @param place from 1
   * @param count of the sheet's programs, those of both its faces
   */
  record Turn(int place, int count) {}

  /** The remarks, in order; where zero is stands among the first. */
  List<String> remarks(WorkedFace face, List<ToolWork> works, Turn turn) {
    List<String> remarks = new ArrayList<>(identity(face, turn));
    remarks.addAll(works.stream().map(work -> work.use().tool()).toList());
    recesses(face, works).ifPresent(remarks::add);
    marks(works).ifPresent(remarks::add);
    turning(face).ifPresent(remarks::add);
    outlines(works).filter(words -> face.isLast()).ifPresent(remarks::add);
    remarks.add(holes(works) + "breakthrough " + length(machine.heights().breakthrough()));
    remarks.add("Caution: hold the sheet down. Protect eyes and ears and lungs");
    remarks.add(
        "Caution: run above the work first, with Z zero raised by "
            + length(machine.raisedToTry(face.deepest(wall))));
    return remarks;
  }

  /** What program this is, for which sheet, and how that lies. */
  private List<String> identity(WorkedFace face, Turn turn) {
    LaidSheet sheet = face.sheet();
    SheetOrigin origin = SheetOrigin.of(machine.zero().corner(), sheet.stock());
    return List.of(
        PlainName.of(wall.name()),
        "Revision " + revision + ", program " + turn.place() + " of " + turn.count(),
        "Sheet " + sheet.mark() + ", " + sheet.faceUp().word() + " face up",
        "Stock "
            + length(sheet.stock().width())
            + " x "
            + length(sheet.stock().height())
            + ", "
            + length(thickness)
            + " thick",
        "All lengths in " + machine.equipment().controller().unit().plural(),
        "X0 Y0 " + origin.words() + " corner of the sheet" + offset(),
        machine.zero().z() == ZZero.SPOILBOARD ? "Z0 spoilboard" : "Z0 sheet top");
  }

  /** Which of the controller's zeros, if it is not the first. */
  private String offset() {
    WorkOffset offset = machine.equipment().controller().frame().workOffset();
    return offset == WorkOffset.G54 ? "" : " in " + offset.name();
  }

  private static String holes(List<ToolWork> works) {
    return "Holes " + works.stream().mapToInt(work -> work.use().holes()).sum() + ", ";
  }

  private Optional<String> turning(WorkedFace face) {
    double axis = face.axis() - SheetOrigin.of(machine.zero().corner(), face.sheet().stock()).x();
    return switch (face.order()) {
      case ONLY -> Optional.empty();
      case FIRST ->
          Optional.of("First face. Afterwards turn over left to right about X " + length(axis));
      case SECOND -> Optional.of("Second face, on pins, turned over about X " + length(axis));
    };
  }

  /** In the programs of the tool that cuts them alone. */
  private Optional<String> recesses(WorkedFace face, List<ToolWork> works) {
    return face.sheet().holes(Kind.RECESS).stream()
        .findFirst()
        .filter(recess -> works.stream().anyMatch(work -> work.recesses() > 0))
        .map(
            recess ->
                "Recesses "
                    + length(recess.bore().diameter())
                    + " wide, "
                    + length(recess.bore().depth())
                    + " deep, leave "
                    + length(thickness - recess.bore().depth()));
  }

  private Optional<String> marks(List<ToolWork> works) {
    Optional<Integer> engraver = ToolBox.engraver(machine).map(Tool::number);
    boolean writes =
        works.stream().anyMatch(work -> engraver.equals(Optional.of(work.use().number())));
    return machine
        .work()
        .marks()
        .filter(wanted -> writes)
        .map(wanted -> "Marks engraved " + length(wanted.depth()) + " deep");
  }

  private Optional<String> outlines(List<ToolWork> works) {
    Optional<Integer> cutter = ToolBox.cutter(machine, thickness).map(Tool::number);
    return works.stream().anyMatch(work -> cutter.equals(Optional.of(work.use().number())))
        ? outlines()
        : Optional.empty();
  }

  private Optional<String> outlines() {
    Routing routing = machine.work().routing();
    String how = ", " + routing.direction().name().toLowerCase(Locale.ROOT);
    return switch (routing.outlines()) {
      case NONE -> Optional.empty();
      case TABS ->
          Optional.of(
              "Outlines with tabs "
                  + length(routing.tabLength())
                  + " long, "
                  + length(routing.tabHeight())
                  + " high"
                  + how);
      case SKIN -> Optional.of("Outlines down to a skin of " + length(routing.skin()) + how);
    };
  }

  /** What a person does once another tool is in. */
  String afterChange() {
    Controller controller = machine.equipment().controller();
    boolean byHand = controller.toolChange() == Controller.ToolChange.PAUSE;
    return byHand && !controller.changePlace().offsets() ? ". Set Z zero again with it" : "";
  }

  /** A tool in words. */
  String tool(Tool tool) {
    String kind = tool.kind().words();
    String name = "Tool T" + tool.number() + ", " + kind + ", diameter " + length(tool.diameter());
    return switch (tool.kind()) {
      case COUNTERSINK, ENGRAVER ->
          name + ", " + Decimal.of(tool.shape().point().angle(), 1) + " degrees";
      case DRILL, END_MILL -> name;
    };
  }

  private String length(double length) {
    return Decimal.of(
        length / machine.equipment().controller().unit().millimetres(),
        machine.equipment().controller().decimals());
  }
}
