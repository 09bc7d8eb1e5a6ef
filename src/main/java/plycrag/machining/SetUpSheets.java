package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import plycrag.check.ApprovedLayout;
import plycrag.document.Book;
import plycrag.document.Book.Block;
import plycrag.document.Book.Section;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.document.ToolUse;
import plycrag.document.Xy;
import plycrag.layout.Layout;
import plycrag.layout.sheets.AlikeSheets;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.sheets.WorkedFace.Order;
import plycrag.layout.standing.SheetDatum;
import plycrag.units.Decimal;
import plycrag.wall.machine.KeepOut;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Machine.ZZero;

/**
 * What the person at the machine reads before a sheet is worked: a page for each sheet and face.
 * Lengths in millimetres.
 */
public final class SetUpSheets {
  private static final String FOOTER =
      "For bouldering only. Never run a program that was changed by hand: its SHA-256 would no"
          + " longer be the one printed here.";

  private static final String TURNED =
      " The line of dashes and dots is the one about which the sheet is turned over.";

  private final Layout layout;
  private final Machine machine;
  private final List<ProgramFile> files;

  private SetUpSheets(ApprovedLayout approved, List<ProgramFile> files) {
    this.layout = approved.layout();
    this.machine = layout.wall().machine();
    this.files = List.copyOf(files);
  }

  /**
   * A page.
   *
   * @param sheet the sheet's mark
   * @param side the face that lies up, front or back
   * @param page what is read
   */
  public record SetUp(String sheet, String side, Book page) {}

  /** The pages for all programs of a wall, sheet by sheet. */
  public static List<SetUp> of(ApprovedLayout approved, List<ProgramFile> files) {
    SetUpSheets all = new SetUpSheets(approved, files);
    return all.layout.faces().stream()
        .filter(face -> !all.on(face).isEmpty())
        .map(all::setUp)
        .toList();
  }

  private List<ProgramFile> on(WorkedFace face) {
    return files.stream()
        .filter(file -> file.program().sheet().equals(face.sheet().mark()))
        .filter(file -> file.program().side().equals(face.sheet().faceUp().word()))
        .toList();
  }

  private SetUp setUp(WorkedFace face) {
    List<ProgramFile> programs = on(face);
    LaidSheet sheet = face.sheet();
    String side = sheet.faceUp().word();
    Book page =
        new Book(
            layout.wall().name() + ": sheet " + sheet.mark(),
            "Set-up sheet for the router, " + side + " face up",
            "",
            FOOTER,
            List.of(
                new Section("The sheet on the machine", onMachine(face, programs)),
                new Section(
                    "Programs, in this order",
                    List.of(programs(programs), boxes(programs), hashes(programs))),
                new Section("Measure on the first sheet", measures(sheet)),
                new Section("Before it runs", MachineCautions.ALL)));
    return new SetUp(sheet.mark(), side, page);
  }

  private List<Block> onMachine(WorkedFace face, List<ProgramFile> programs) {
    LaidSheet sheet = face.sheet();
    SheetOrigin origin = SheetOrigin.of(machine.zero().corner(), sheet.stock());
    return List.of(
        new Book.Figure(
            new TourPicture(face, origin, machine.equipment().keepOuts()).of(programs),
            "The sheet as it lies on the machine, "
                + sheet.faceUp().word()
                + " face up. X and Y are zero at the corner with the black triangle; the dashes are"
                + " the tool's way from hole to hole; crossed boxes are kept out of."
                + (face.order() == Order.ONLY ? "" : TURNED)),
        new Book.Listing(new Table("Setting up", List.of("what", "how"), settings(face, origin))));
  }

  private List<List<Cell>> settings(WorkedFace face, SheetOrigin origin) {
    LaidSheet sheet = face.sheet();
    SheetWork work = new SheetWork(layout.wall(), face);
    double thickness = layout.wall().sheet().thickness();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("Sheet", sheet.mark() + ", with " + pieces(sheet)));
    rows.add(row("Sheets like it", twins(sheet)));
    rows.add(
        row(
            "Size",
            mm(sheet.stock().width())
                + " × "
                + mm(sheet.stock().height())
                + " × "
                + mm(thickness)
                + " mm thick, measured"));
    rows.add(row("Face up", sheet.faceUp().word()));
    work.turning().ifPresent(turning -> rows.add(row("Both faces", turning)));
    rows.add(row("X0 Y0", origin.words() + " corner of the sheet"));
    SheetDatum datum = SheetDatum.of(layout, sheet);
    if (datum.isOdd()) {
      rows.add(
          row(
              "Stops",
              "at the "
                  + datum.levelEdge()
                  + " and the "
                  + datum.sideEdge()
                  + ", which meet seams: this sheet is as bought, and X0 Y0 is as far from them as"
                  + " its stated size says"));
    }
    rows.add(
        row(
            "Z0",
            machine.zero().z() == ZZero.SPOILBOARD
                ? "on the board under the sheet"
                : "on the sheet's top"));
    rows.add(row("Into the board", mm(machine.heights().breakthrough()) + " mm"));
    rows.add(
        row(
            "Above the sheet",
            mm(machine.heights().clearance())
                + " mm from hole to hole; "
                + mm(machine.heights().safe())
                + " mm first and last, which must clear every clamp"));
    rows.add(row("Holes", work.holes()));
    work.recesses().ifPresent(recesses -> rows.add(row("Flange recesses", recesses)));
    work.heads().ifPresent(heads -> rows.add(row("Heads let in", heads)));
    work.marks().ifPresent(marks -> rows.add(row("Marks engraved", marks)));
    machine
        .equipment()
        .keepOuts()
        .forEach(place -> rows.add(row("Keep out", words(place, origin))));
    return rows;
  }

  private static String words(KeepOut place, SheetOrigin origin) {
    Xy low = origin.from(place.corner().left(), place.corner().low());
    return place.name()
        + ": X "
        + mm(low.x())
        + " to "
        + mm(low.x() + place.size().width())
        + ", Y "
        + mm(low.y())
        + " to "
        + mm(low.y() + place.size().height())
        + ", up to "
        + mm(place.rise())
        + " mm above the sheet";
  }

  private static List<Cell> row(String what, String how) {
    return List.of(Cell.of(what), Cell.of(how));
  }

  private static String pieces(LaidSheet sheet) {
    return sheet.pieces().stream()
        .map(laid -> laid.piece().mark() + " of " + laid.facet())
        .collect(Collectors.joining(", "));
  }

  /** The other sheets that are worked alike. */
  private String twins(LaidSheet sheet) {
    String others =
        new AlikeSheets(layout.sheets())
            .marks(laid(sheet.mark())).stream()
                .filter(mark -> !mark.equals(sheet.mark()))
                .collect(Collectors.joining(", "));
    String but = machine.work().marks().isPresent() ? ", but for the marks engraved" : "";
    return others.isEmpty()
        ? "none: this one alone"
        : others + ": laid, drilled and cut the same" + but;
  }

  private LaidSheet laid(String mark) {
    return layout.sheets().stream()
        .filter(sheet -> sheet.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private Block programs(List<ProgramFile> programs) {
    String estimate =
        "Estimated time: rapids "
            + mm(machine.equipment().limits().rapidRate())
            + " mm/min, acceleration "
            + mm(machine.equipment().limits().acceleration())
            + " mm/s², a stop after every move, no time for changing tools";
    return new Book.Listing(
        new Table(
            estimate,
            List.of("program", "tool", "rpm", "holes", "minutes"),
            programs.stream().map(this::program).toList()));
  }

  private List<Cell> program(ProgramFile file) {
    List<ToolUse> uses = file.program().uses();
    double minutes = RunTime.of(file.program().moves(), machine.equipment().limits()) / 60;
    return List.of(
        Cell.of(file.name()),
        Cell.of(joined(uses, ToolUse::tool)),
        Cell.of(joined(uses, use -> Decimal.of(use.speed(), 0))),
        Cell.of(joined(uses, use -> Decimal.of(use.holes(), 0))),
        Cell.of((int) Math.ceil(minutes)));
  }

  private static String joined(List<ToolUse> uses, Function<ToolUse, String> words) {
    return uses.stream().map(words).collect(Collectors.joining("; "));
  }

  private static Block boxes(List<ProgramFile> programs) {
    return new Book.Listing(
        new Table(
            "Where the tool's tip goes, from X0 Y0 Z0",
            List.of("program", "X mm", "Y mm", "lowest Z mm"),
            programs.stream().map(SetUpSheets::box).toList()));
  }

  private static List<Cell> box(ProgramFile file) {
    ProgramBox box = ProgramBox.of(file.program().moves());
    return List.of(
        Cell.of(file.name()),
        Cell.of(words(box.x())),
        Cell.of(words(box.y())),
        Cell.number(box.bottom(), 1));
  }

  private static String words(ProgramBox.Span span) {
    return mm(span.least()) + " to " + mm(span.greatest());
  }

  private static Block hashes(List<ProgramFile> programs) {
    return new Book.Listing(
        new Table(
            "SHA-256 of the programs",
            List.of("program", "SHA-256"),
            programs.stream().map(file -> row(file.name(), grouped(file.sha256()))).toList()));
  }

  /** In groups of eight digits, which a page can break and an eye compare. */
  private static String grouped(String digits) {
    return digits.replaceAll("(.{8})(?=.)", "$1 ");
  }

  private static List<Block> measures(LaidSheet sheet) {
    return List.of(
        new Book.Paragraph(
            "Stop after the first sheet and measure these before the next, hole centre to hole"
                + " centre or to the sheet's edge. One of them wrong by more than a millimetre: the"
                + " sheet has moved, lies askew, or the machine's steps are not calibrated."),
        new Book.Listing(
            new Table(
                "Three distances",
                List.of("from", "to", "mm", "measured"),
                CheckMeasures.of(sheet).stream()
                    .map(
                        one ->
                            List.of(
                                Cell.of(one.from()),
                                Cell.of(one.to()),
                                Cell.number(one.distance(), 1),
                                Cell.of("")))
                    .toList())));
  }

  private static String mm(double length) {
    return Decimal.of(length, 1);
  }
}
