package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.ApprovedLayout;
import plycrag.document.Book;
import plycrag.document.Book.Block;
import plycrag.document.Book.Section;
import plycrag.document.Table;
import plycrag.document.ToolUse;
import plycrag.layout.Layout;
import plycrag.layout.Revision;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.sheets.WorkedFace.Order;
import plycrag.wall.machine.Machine;

/**
 * What the person at the machine reads before a sheet is worked: a page for each sheet and face.
 * Lengths in the unit of the programs.
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
  private final MachineLengths lengths;
  private final SetUpRows rows;
  private final SetUpTables tables;
  private final String revision;

  private SetUpSheets(ApprovedLayout approved, List<ProgramFile> files) {
    this.layout = approved.layout();
    this.machine = layout.wall().machine();
    this.files = List.copyOf(files);
    this.lengths = new MachineLengths(machine.equipment().controller().unit());
    this.rows = new SetUpRows(layout, lengths);
    this.tables = new SetUpTables(layout.wall(), lengths);
    this.revision = Revision.of(layout);
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
    String raised = lengths.words(machine.raisedToTry(face.deepest(layout.wall())));
    Book page =
        new Book(
            layout.wall().name() + ": sheet " + sheet.mark(),
            "Set-up sheet for the router, " + side + " face up, revision " + revision,
            "",
            FOOTER,
            List.of(
                new Section("The sheet on the machine", onMachine(face, programs)),
                new Section("Programs, in this order", tables.programs(programs, total(sheet))),
                new Section("Measure", tables.measures(face)),
                new Section(
                    "Before it runs",
                    MachineCautions.of(raised, speeds(programs), machine.equipment().limits()))));
    return new SetUp(sheet.mark(), side, page);
  }

  private static List<Double> speeds(List<ProgramFile> programs) {
    return programs.stream()
        .flatMap(file -> file.program().uses().stream())
        .map(ToolUse::speed)
        .toList();
  }

  /** How many programs a sheet has, on both its faces. */
  private int total(LaidSheet sheet) {
    return (int) files.stream().filter(file -> file.program().sheet().equals(sheet.mark())).count();
  }

  private List<Block> onMachine(WorkedFace face, List<ProgramFile> programs) {
    LaidSheet sheet = face.sheet();
    SheetOrigin origin = SheetOrigin.of(machine.zero().corner(), sheet.stock());
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Book.Figure(
            new TourPicture(face, origin, machine.equipment().keepOuts()).of(programs),
            "The sheet as it lies on the machine, "
                + sheet.faceUp().word()
                + " face up. X and Y are zero at the corner with the black triangle; the dashes are"
                + " the tool's way from hole to hole; crossed boxes are kept out of; letters stand"
                + " where to measure."
                + (face.order() == Order.ONLY ? "" : TURNED)));
    blocks.add(
        new Book.Listing(
            new Table("Setting up", List.of("what", "how"), rows.of(face, programs, revision))));
    return blocks;
  }
}
