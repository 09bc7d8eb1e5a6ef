package plycrag.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Contours;
import plycrag.layout.Layout;
import plycrag.layout.sheets.EngravedMark;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.WorkedFace;
import plycrag.proof.ProgramSchedule.Run;
import plycrag.proof.replay.Bench;
import plycrag.proof.replay.Cutter;
import plycrag.proof.replay.Expected;
import plycrag.proof.replay.Fault;
import plycrag.proof.replay.Heights;
import plycrag.proof.replay.Program;
import plycrag.proof.replay.SelfCheck;
import plycrag.wall.machine.ChangePlace;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Controller.ToolChange;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Machine.ZZero;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/**
 * Has every program read back and held against the layout before the folder is released. What is
 * expected is told by the layout, its wall and the programs' names, never by what made them.
 */
public final class ProgramCheck {
  private static final Pattern NAME =
      Pattern.compile("cnc/sheet-(S[0-9]+)-(front|back)-t([0-9]{2,6})\\.ngc");

  /** Of a program that no sheet asks for: of no width, so that whatever it makes is wrong. */
  private static final Cutter NO_CUTTER = new Cutter(0, 0, false, 0, new Cutter.Feeds(0, 0));

  /** One fault often brings others with it. */
  private static final int MOST = 10;

  private final Layout layout;
  private final Machine machine;
  private final Heights heights;
  private final ProgramSchedule schedule;
  private final HeadText heads;
  private final ControllerCustoms customs;
  private final Optional<Tool> cutter;

  private ProgramCheck(Layout layout) {
    this.layout = layout;
    this.machine = layout.wall().machine();
    this.heights = heights(layout.wall().sheet().thickness(), machine);
    this.schedule = new ProgramSchedule(layout);
    this.heads = new HeadText(layout, schedule);
    this.customs = new ControllerCustoms(machine.equipment().controller().frame());
    this.cutter = ToolBox.cutter(machine, layout.wall().sheet().thickness());
  }

  /**
   * Lets programs pass.
   *
   * @param programs all of a folder's
   * @throws IllegalStateException if they do not make what the layout asks for, a defect of their
   *     maker; the message names programs, lines and faults
   */
  public static void require(Layout layout, List<WrittenProgram> programs) {
    List<Fault> faults = new ProgramCheck(layout).faults(programs);
    if (!faults.isEmpty()) {
      throw new IllegalStateException("programs failed their self-check:\n" + told(faults));
    }
  }

  private static String told(List<Fault> faults) {
    String first = faults.stream().limit(MOST).map(Fault::text).collect(Collectors.joining("\n"));
    return faults.size() > MOST ? first + "\nand " + (faults.size() - MOST) + " more" : first;
  }

  private static Heights heights(double thickness, Machine machine) {
    double top = machine.zero().z() == ZZero.SPOILBOARD ? thickness : 0;
    double bottom = top - thickness;
    return new Heights(
        new Heights.Faces(top, bottom),
        new Heights.Travel(
            bottom - machine.heights().breakthrough(),
            top + machine.heights().clearance(),
            top + machine.heights().safe()));
  }

  private List<Fault> faults(List<WrittenProgram> programs) {
    List<Fault> faults = new ArrayList<>();
    List<WrittenProgram> left = new ArrayList<>(programs);
    for (WorkedFace face : layout.faces()) {
      List<WrittenProgram> own = programs.stream().filter(one -> isFor(one, face.sheet())).toList();
      left.removeAll(own);
      faults.addAll(faults(face, own));
    }
    return Stream.concat(
            left.stream().map(one -> new Fault(one.path(), 0, "is for no sheet")), faults.stream())
        .toList();
  }

  private static boolean isFor(WrittenProgram program, LaidSheet sheet) {
    Matcher name = NAME.matcher(program.path());
    return name.matches()
        && name.group(1).equals(sheet.mark())
        && name.group(2).equals(sheet.faceUp().word());
  }

  private List<Fault> faults(WorkedFace face, List<WrittenProgram> programs) {
    LaidSheet sheet = face.sheet();
    List<Expected.Hole> holes =
        sheet.holes().stream()
            .filter(hole -> hole.bore().side() == sheet.faceUp())
            .map(hole -> expected(hole, corner(sheet)))
            .toList();
    return new SelfCheck(ControllerAbilities.by(machine.equipment().controller()), bench(face))
        .faults(
            "sheet " + sheet.mark() + ", " + sheet.faceUp().word(),
            new Expected(holes, contours(face), marks(face), area(sheet)),
            programs.stream().map(one -> program(one, face)).toList());
  }

  private List<Expected.Contour> contours(WorkedFace face) {
    LaidSheet sheet = face.sheet();
    return cutter
        .filter(tool -> face.isLast())
        .map(
            tool ->
                new ExpectedContours(
                    machine.work().routing(), heights, tool.diameter(), sheet.area()))
        .map(all -> all.of(sheet, layout.offcuts().of(sheet), corner(sheet)))
        .orElse(List.of());
  }

  private List<Expected.Mark> marks(WorkedFace face) {
    Coordinate corner = corner(face.sheet());
    return machine.work().marks().stream()
        .flatMap(
            wanted ->
                face.marks().stream()
                    .map(mark -> expected(mark, corner, heights.sheet().top() - wanted.depth())))
        .toList();
  }

  private static Expected.Mark expected(EngravedMark mark, Coordinate corner, double bottom) {
    Envelope box = mark.box();
    box.translate(-corner.x, -corner.y);
    List<List<Coordinate>> strokes =
        mark.strokes().stream()
            .map(
                stroke ->
                    stroke.stream()
                        .map(at -> new Coordinate(at.x - corner.x, at.y - corner.y))
                        .toList())
            .toList();
    return new Expected.Mark("the mark of piece " + mark.piece(), box, bottom, strokes);
  }

  /** The sheet, counted from where X and Y are zero. */
  private Envelope area(LaidSheet sheet) {
    Coordinate corner = corner(sheet);
    Envelope area = sheet.area();
    area.translate(-corner.x, -corner.y);
    return area;
  }

  private Bench bench(WorkedFace face) {
    LaidSheet sheet = face.sheet();
    Envelope travel = area(sheet);
    travel.expandBy(cutter.map(tool -> Contours.farthest(tool.diameter())).orElse(0.0));
    Bench.Stop stop = stop();
    stop.place().ifPresent(travel::expandToInclude);
    customs.park().ifPresent(travel::expandToInclude);
    return new Bench(
        heights(sheet),
        travel,
        keepOuts(corner(sheet)),
        machine.spindle().dwell(),
        HeadText.zero(machine),
        stop);
  }

  /** Where tools are changed: at a place where a person does it, or where one is told. */
  private Bench.Stop stop() {
    Controller controller = machine.equipment().controller();
    ChangePlace told = controller.changePlace();
    boolean placed =
        controller.toolChange() == ToolChange.PAUSE || told.x().isPresent() || told.y().isPresent();
    boolean changes = controller.toolChange() != ToolChange.PROGRAM;
    return new Bench.Stop(
        changes
            ? Math.max(heights.travel().safe(), heights.sheet().top() + told.height())
            : heights.travel().safe(),
        changes && placed
            ? Optional.of(new Coordinate(told.x().orElse(0.0), told.y().orElse(0.0)))
            : Optional.empty());
  }

  /** Holes for pins go deeper into the board than all else. */
  private Heights heights(LaidSheet sheet) {
    double lowest =
        sheet.holes().stream().mapToDouble(this::bottom).min().orElse(heights.travel().floor());
    return new Heights(
        heights.sheet(),
        new Heights.Travel(
            Math.min(lowest, heights.travel().floor()),
            heights.travel().clearance(),
            heights.travel().safe()));
  }

  private double bottom(MachinedHole hole) {
    return heights.sheet().top() - reach(hole);
  }

  private List<Envelope> keepOuts(Coordinate corner) {
    return machine.equipment().keepOuts().stream()
        .map(
            place ->
                new Envelope(
                    place.corner().left() - corner.x,
                    place.right() - corner.x,
                    place.corner().low() - corner.y,
                    place.high() - corner.y))
        .toList();
  }

  /** Where X and Y are zero, counted from the sheet's lower left corner. */
  private Coordinate corner(LaidSheet sheet) {
    double width = sheet.stock().width();
    double height = sheet.stock().height();
    return switch (machine.zero().corner()) {
      case LOWER_LEFT -> new Coordinate(0, 0);
      case LOWER_RIGHT -> new Coordinate(width, 0);
      case UPPER_LEFT -> new Coordinate(0, height);
      case UPPER_RIGHT -> new Coordinate(width, height);
    };
  }

  private Expected.Hole expected(MachinedHole hole, Coordinate corner) {
    boolean recess = hole.kind() == MachinedHole.Kind.RECESS;
    return new Expected.Hole(
        recess ? hole.mark() + " (recess)" : hole.mark(),
        hole.spot().x() - corner.x,
        hole.spot().y() - corner.y,
        hole.bore().diameter(),
        bottom(hole));
  }

  /** By its name it is one of the sheet's runs, with that run's tools and words. */
  private Program program(WrittenProgram written, WorkedFace face) {
    List<Run> runs = schedule.of(face.sheet().mark());
    Matcher name = NAME.matcher(written.path());
    int place = name.matches() ? Integer.parseInt(name.group(3)) : 0;
    if (place < 1 || place > runs.size() || !runs.get(place - 1).face().equals(face)) {
      return new Program(written.path(), written.text(), List.of(NO_CUTTER));
    }
    Run run = runs.get(place - 1);
    return new Program(
        written.path(),
        written.text(),
        run.tools().stream().map(ProgramCheck::cutter).toList(),
        heads.of(run, place, runs.size()),
        customs.of(schedule.before(face.sheet().mark()) + place - 1));
  }

  private double reach(MachinedHole hole) {
    return schedule.reach(hole);
  }

  private static Cutter cutter(Tool tool) {
    Cutter.Feeds feeds =
        new Cutter.Feeds(tool.drive().feeds().plunge(), tool.drive().feeds().cut());
    boolean engraves = tool.kind() == Tool.Kind.ENGRAVER;
    boolean sideways = engraves || tool.kind() == Tool.Kind.END_MILL;
    Cutter plain =
        new Cutter(tool.number(), tool.diameter(), sideways, tool.drive().speed(), feeds)
            .stepping(new Cutter.Steps(tool.steps().pass(), tool.steps().peck()));
    boolean tapers = engraves || tool.kind() == Tool.Kind.COUNTERSINK;
    return tapers
        ? plain.tapering(new Cutter.Taper(tool.shape().point().tip(), tool.shape().point().angle()))
        : plain;
  }
}
