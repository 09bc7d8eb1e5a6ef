package plycrag.proof;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plycrag.layout.Layout;
import plycrag.layout.Revision;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.WorkedFace;
import plycrag.proof.ProgramSchedule.Run;
import plycrag.units.Decimal;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Controller.ToolChange;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Machine.Origin;
import plycrag.wall.machine.Machine.ZZero;
import plycrag.wall.machine.Routing;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** What a program must tell the person at the machine, word for word, in capitals. */
final class HeadText {
  private static final int LONGEST_NAME = 40;

  private final Layout layout;
  private final Machine machine;
  private final double thickness;
  private final String revision;
  private final ProgramSchedule schedule;

  HeadText(Layout layout, ProgramSchedule schedule) {
    this.schedule = schedule;
    this.layout = layout;
    this.machine = layout.wall().machine();
    this.thickness = layout.wall().sheet().thickness();
    this.revision = Revision.of(layout);
  }

  /**
   * What a program tells before its first word, and where tools are changed.
   *
   * @param place of the run, from 1
   * @param count of the sheet's runs
   */
  List<String> of(Run run, int place, int count) {
    WorkedFace face = run.face();
    List<String> told = new ArrayList<>();
    told.add(name());
    told.add("Revision " + revision + " program " + place + " of " + count);
    told.add("Sheet " + face.sheet().mark() + " " + face.sheet().faceUp().word() + " face up");
    told.add(
        "Stock "
            + length(face.sheet().stock().width())
            + " x "
            + length(face.sheet().stock().height())
            + " "
            + length(thickness)
            + " thick");
    told.add("All lengths in " + machine.equipment().controller().unit().plural());
    told.add("X0 Y0 " + corner() + " corner of the sheet" + offset());
    told.add(zero(machine));
    run.tools().forEach(tool -> told.add(tool(tool)));
    told.addAll(work(run));
    told.add("Caution: hold the sheet down. Protect eyes and ears and lungs");
    told.add(
        "Caution: run above the work first with Z zero raised by "
            + length(machine.raisedToTry(face.deepest(layout.wall()))));
    told.addAll(changes(run));
    return told.stream().map(line -> line.toUpperCase(Locale.ROOT)).toList();
  }

  /** Where Z is zero. */
  static String zero(Machine machine) {
    return machine.zero().z() == ZZero.SPOILBOARD ? "Z0 SPOILBOARD" : "Z0 SHEET TOP";
  }

  private List<String> work(Run run) {
    WorkedFace face = run.face();
    List<MachinedHole> holes =
        face.sheet().holes().stream()
            .filter(hole -> schedule.tool(hole).filter(run.tools()::contains).isPresent())
            .toList();
    List<String> told = new ArrayList<>();
    holes.stream()
        .filter(hole -> hole.kind() == Kind.RECESS)
        .findFirst()
        .ifPresent(recess -> told.add(recess(recess.bore())));
    machine
        .work()
        .marks()
        .filter(marks -> run.tools().stream().anyMatch(tool -> isEngraver(tool)))
        .ifPresent(marks -> told.add("Marks engraved " + length(marks.depth()) + " deep"));
    turning(face).ifPresent(told::add);
    if (face.isLast() && run.tools().stream().anyMatch(this::isCutter)) {
      outlines().ifPresent(told::add);
    }
    told.add("Holes " + holes.size() + " breakthrough " + length(machine.heights().breakthrough()));
    return told;
  }

  private String recess(MachinedHole.Bore bore) {
    return "Recesses "
        + length(bore.diameter())
        + " wide "
        + length(bore.depth())
        + " deep leave "
        + length(thickness - bore.depth());
  }

  private Optional<String> turning(WorkedFace face) {
    boolean right =
        machine.zero().corner() == Origin.LOWER_RIGHT
            || machine.zero().corner() == Origin.UPPER_RIGHT;
    String about = length(face.axis() - (right ? face.sheet().stock().width() : 0));
    return switch (face.order()) {
      case ONLY -> Optional.empty();
      case FIRST -> Optional.of("First face. Afterwards turn over left to right about X " + about);
      case SECOND -> Optional.of("Second face on pins turned over about X " + about);
    };
  }

  private Optional<String> outlines() {
    Routing routing = machine.work().routing();
    String direction = " " + routing.direction().name();
    return switch (routing.outlines()) {
      case NONE -> Optional.empty();
      case TABS ->
          Optional.of(
              "Outlines with tabs "
                  + length(routing.tabLength())
                  + " long "
                  + length(routing.tabHeight())
                  + " high"
                  + direction);
      case SKIN -> Optional.of("Outlines down to a skin of " + length(routing.skin()) + direction);
    };
  }

  private List<String> changes(Run run) {
    Controller controller = machine.equipment().controller();
    boolean zeroed =
        controller.toolChange() == ToolChange.PAUSE && !controller.changePlace().offsets();
    return controller.toolChange() == ToolChange.PROGRAM
        ? List.of()
        : run.tools().stream()
            .map(tool -> tool(tool) + (zeroed ? ". Set Z zero again with it" : ""))
            .toList();
  }

  private String tool(Tool tool) {
    String plain =
        "Tool T"
            + tool.number()
            + " "
            + tool.kind().words()
            + " diameter "
            + length(tool.diameter());
    boolean tapers = tool.kind() == Tool.Kind.COUNTERSINK || tool.kind() == Tool.Kind.ENGRAVER;
    return tapers ? plain + " " + Decimal.of(tool.shape().point().angle(), 1) + " degrees" : plain;
  }

  private boolean isEngraver(Tool tool) {
    return ToolBox.engraver(machine).equals(Optional.of(tool));
  }

  private boolean isCutter(Tool tool) {
    return ToolBox.cutter(machine, thickness).equals(Optional.of(tool));
  }

  private String offset() {
    String word = machine.equipment().controller().frame().workOffset().name();
    return word.equals("G54") ? "" : " in " + word;
  }

  private String corner() {
    return machine.zero().corner().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** What controllers can show of the wall's name. */
  private String name() {
    String folded = Normalizer.normalize(layout.wall().name(), Normalizer.Form.NFD);
    String plain =
        folded.replaceAll("\\p{M}+", "").replaceAll("[^A-Za-z0-9 ._-]+", " ").replaceAll(" +", " ");
    String stripped = plain.strip();
    return stripped.substring(0, Math.min(LONGEST_NAME, stripped.length())).strip();
  }

  private String length(double length) {
    Controller controller = machine.equipment().controller();
    return Decimal.of(length / controller.unit().millimetres(), controller.decimals());
  }
}
