package plycrag.machining;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import plycrag.document.Book;
import plycrag.document.Book.Block;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.document.ToolUse;
import plycrag.document.Xy;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.WorkedFace;
import plycrag.units.Decimal;
import plycrag.wall.Wall;
import plycrag.wall.machine.Machine;

/** What runs on a sheet, and what is measured on it. */
final class SetUpTables {
  /** How far diagonals may differ (a choice, no source), mm. */
  private static final double LARGEST = 2;

  /**
   * How far a sheet's thickness may be off where something ends in it (a choice, no source), mm.
   */
  private static final double THIN = 0.3;

  private final Wall wall;
  private final Machine machine;
  private final MachineLengths lengths;

  SetUpTables(Wall wall, MachineLengths lengths) {
    this.wall = wall;
    this.machine = wall.machine();
    this.lengths = lengths;
  }

  /**
   * What runs, in which order, and where it goes.
   *
   * @param total how many programs the sheet has, on both its faces
   */
  List<Block> programs(List<ProgramFile> programs, int total) {
    return List.of(runs(programs, total), boxes(programs), hashes(programs));
  }

  private Block runs(List<ProgramFile> programs, int total) {
    String estimate =
        "Estimated time: rapids "
            + lengths.number(machine.equipment().limits().rapidRate())
            + " "
            + lengths.word()
            + "/min, acceleration "
            + lengths.number(machine.equipment().limits().acceleration())
            + " "
            + lengths.word()
            + "/s², a stop after every move, no time for changing tools";
    return new Book.Listing(
        new Table(
            estimate,
            List.of("order", "program", "tool", "rpm", "holes", "minutes"),
            programs.stream().map(file -> program(file, total)).toList()));
  }

  private List<Cell> program(ProgramFile file, int total) {
    List<ToolUse> uses = file.program().uses();
    double minutes = RunTime.of(file.program().moves(), machine.equipment().limits()) / 60;
    return List.of(
        Cell.of(file.program().place() + " of " + total),
        Cell.of(file.name()),
        Cell.of(joined(uses, use -> use.tool() + perTooth(use))),
        Cell.of(joined(uses, use -> Decimal.of(use.speed(), 0))),
        Cell.of(joined(uses, use -> Decimal.of(use.holes(), 0))),
        Cell.of((int) Math.ceil(minutes)));
  }

  /** What an edge takes at a turn, where it is known how many there are. */
  private String perTooth(ToolUse use) {
    return machine.equipment().tools().stream()
        .filter(tool -> tool.number() == use.number())
        .flatMap(tool -> tool.feedPerTooth().stream())
        .map(feed -> ", feed per tooth " + lengths.fine(feed))
        .findFirst()
        .orElse("");
  }

  private static String joined(List<ToolUse> uses, Function<ToolUse, String> words) {
    return uses.stream().map(words).collect(Collectors.joining("; "));
  }

  private Block boxes(List<ProgramFile> programs) {
    return new Book.Listing(
        new Table(
            "Where the tool's tip goes, from X0 Y0 Z0",
            List.of(
                "program",
                "X " + lengths.word(),
                "Y " + lengths.word(),
                "lowest Z " + lengths.word()),
            programs.stream().map(this::box).toList()));
  }

  private List<Cell> box(ProgramFile file) {
    ProgramBox box = ProgramBox.of(List.of(file.program()));
    return List.of(
        Cell.of(file.name()),
        Cell.of(words(box.x())),
        Cell.of(words(box.y())),
        Cell.of(lengths.number(box.bottom())));
  }

  private String words(ProgramBox.Span span) {
    return lengths.number(span.least()) + " to " + lengths.number(span.greatest());
  }

  private static Block hashes(List<ProgramFile> programs) {
    return new Book.Listing(
        new Table(
            "SHA-256 of the programs",
            List.of("program", "SHA-256"),
            programs.stream()
                .map(file -> List.of(Cell.of(file.name()), Cell.of(grouped(file.sha256()))))
                .toList()));
  }

  /** In groups of eight digits, which a page can break and an eye compare. */
  private static String grouped(String digits) {
    return digits.replaceAll("(.{8})(?=.)", "$1 ");
  }

  /** Before the sheet is worked, and after the first of its kind. */
  List<Block> measures(WorkedFace face) {
    LaidSheet sheet = face.sheet();
    return List.of(
        new Book.Paragraph(
            "Before: both ends of the sheet and both diagonals. The diagonals differ by less than "
                + lengths.words(LARGEST)
                + ", and each edge is as told to as much, or the sheet is out of square and goes"
                + " back."
                + thickness(face)),
        table("Before it is worked", CheckMeasures.before(sheet)),
        new Book.Paragraph(
            "After the first sheet: from its edges to the holes with letters on the picture, centre"
                + " by centre, before the next. A sheet that lies turned reads less at one end of an"
                + " edge than at the other. One of them wrong by more than "
                + lengths.words(LARGEST / 2)
                + ": the sheet has moved, lies askew, or the machine's steps are not calibrated."),
        table("After the first of them", CheckMeasures.after(sheet)),
        marks(sheet));
  }

  /** Where something ends within the sheet, its thickness decides how much is left. */
  private String thickness(WorkedFace face) {
    double thickness = wall.sheet().thickness();
    boolean blind =
        face.sheet().holes().stream().anyMatch(hole -> hole.bore().depth() < thickness)
            || !face.marks().isEmpty()
            || wall.machine().work().routing().cuts();
    return blind
        ? " Thickness at all four corners between "
            + lengths.number(thickness - THIN)
            + " and "
            + lengths.words(thickness + THIN)
            + ": what ends within the sheet depends on it; else enter what is measured ([sheet]"
            + " thickness) and make the files anew."
        : "";
  }

  private Block table(String title, List<CheckMeasures.Measure> measures) {
    return new Book.Listing(
        new Table(
            title,
            List.of("from", "to", lengths.word(), "measured"),
            measures.stream()
                .map(
                    one ->
                        List.of(
                            Cell.of(one.from()),
                            Cell.of(one.to()),
                            Cell.of(lengths.number(one.distance())),
                            Cell.of("")))
                .toList()));
  }

  private Block marks(LaidSheet sheet) {
    SheetOrigin origin = SheetOrigin.of(wall.machine().zero().corner(), sheet.stock());
    return new Book.Listing(
        new Table(
            "The lettered holes, from X0 Y0",
            List.of("letter", "hole", "X " + lengths.word(), "Y " + lengths.word()),
            CheckMeasures.marks(sheet).stream()
                .map(
                    mark -> {
                      Xy place = origin.from(mark.place().x(), mark.place().y());
                      return List.of(
                          Cell.of(mark.letter()),
                          Cell.of(mark.name()),
                          Cell.of(lengths.number(place.x())),
                          Cell.of(lengths.number(place.y())));
                    })
                .toList()));
  }
}
