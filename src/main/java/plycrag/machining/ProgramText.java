package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.WorkedFace;
import plycrag.units.Decimal;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Machine.ZZero;
import plycrag.wall.machine.Routing;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** What a program tells the person at the machine, lengths in the program's unit. */
final class ProgramText {
  private final String wall;
  private final Machine machine;
  private final double thickness;

  /**
   * Tells about one wall's programs.
   *
   * @param wall the wall's name
   * @param thickness of the sheets, mm
   */
  ProgramText(String wall, Machine machine, double thickness) {
    this.wall = wall;
    this.machine = machine;
    this.thickness = thickness;
  }

  /** The remarks, in order. */
  List<String> remarks(WorkedFace face, List<ToolWork> works) {
    LaidSheet sheet = face.sheet();
    SheetOrigin origin = SheetOrigin.of(machine.zero().corner(), sheet.stock());
    List<String> remarks = new ArrayList<>();
    remarks.add(PlainName.of(wall));
    remarks.add("Sheet " + sheet.mark() + ", " + sheet.faceUp().word() + " face up");
    remarks.add("X0 Y0 " + origin.words() + " corner of the sheet");
    remarks.add(machine.zero().z() == ZZero.SPOILBOARD ? "Z0 spoilboard" : "Z0 sheet top");
    remarks.add(
        "Sheet "
            + length(thickness)
            + " thick, breakthrough "
            + length(machine.heights().breakthrough()));
    remarks.addAll(works.stream().map(work -> work.use().tool()).toList());
    recesses(face, works).ifPresent(remarks::add);
    marks(works).ifPresent(remarks::add);
    turning(face).ifPresent(remarks::add);
    outlines().filter(words -> face.isLast()).ifPresent(remarks::add);
    remarks.add(
        holes(works) + "all lengths in " + machine.equipment().controller().unit().plural());
    remarks.add("Caution: hold the sheet down. Protect eyes and ears and lungs");
    remarks.add("Caution: run above the work first");
    return remarks;
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
