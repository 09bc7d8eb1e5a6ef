package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plycrag.document.Cell;
import plycrag.document.Xy;
import plycrag.layout.Layout;
import plycrag.layout.sheets.AlikeSheets;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.standing.SheetDatum;
import plycrag.wall.machine.ChangePlace;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.KeepOut;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Machine.ZZero;
import plycrag.wall.machine.ProgramFrame;
import plycrag.wall.machine.ProgramFrame.Beside;
import plycrag.wall.machine.ProgramFrame.WorkOffset;

/** How a sheet is set up, row by row. */
final class SetUpRows {
  private final Layout layout;
  private final Machine machine;
  private final MachineLengths lengths;

  SetUpRows(Layout layout, MachineLengths lengths) {
    this.layout = layout;
    this.machine = layout.wall().machine();
    this.lengths = lengths;
  }

  /** All rows, in the order of the work. */
  List<List<Cell>> of(WorkedFace face, List<ProgramFile> programs, String revision) {
    LaidSheet sheet = face.sheet();
    SheetOrigin origin = SheetOrigin.of(machine.zero().corner(), sheet.stock());
    SheetWork work = new SheetWork(layout.wall(), face, lengths);
    double thickness = layout.wall().sheet().thickness();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("Revision", revision + ": the same stands in the head of every program"));
    rows.add(row("Sheet", sheet.mark() + ", with " + pieces(sheet)));
    rows.add(row("Sheets like it", twins(sheet)));
    rows.add(
        row(
            "Size",
            lengths.number(sheet.stock().width())
                + " × "
                + lengths.number(sheet.stock().height())
                + " × "
                + lengths.number(thickness)
                + " "
                + lengths.word()
                + " thick, measured"));
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
    rows.add(
        row(
            "Into the board",
            lengths.number(machine.heights().breakthrough()) + " " + lengths.word()));
    ProgramBox box = ProgramBox.of(programs.stream().map(ProgramFile::program).toList());
    rows.add(row("Above the sheet", above(box)));
    changes().ifPresent(words -> rows.add(row("Changing tools", words)));
    around().ifPresent(words -> rows.add(row("At the controller", words)));
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

  /** What may stand where, since the tool goes from hole to hole as low as told. */
  private String above(ProgramBox box) {
    boolean none = machine.equipment().keepOuts().isEmpty();
    return "nothing above "
        + lengths.words(machine.heights().clearance())
        + " inside X "
        + span(box.x())
        + ", Y "
        + span(box.y())
        + (none ? "" : ", but for what is kept out of below")
        + ": so low the tool goes from hole to hole. First and last, and over what is kept out of,"
        + " it is "
        + lengths.words(machine.heights().safe())
        + " up";
  }

  private String span(ProgramBox.Span span) {
    return lengths.number(span.least()) + " to " + lengths.number(span.greatest());
  }

  /** Where a person or the machine changes tools within a program. */
  private Optional<String> changes() {
    Controller controller = machine.equipment().controller();
    ChangePlace place = controller.changePlace();
    String up = lengths.words(Math.max(place.height(), machine.heights().safe()));
    String again =
        place.offsets() ? "; its length is told by its number" : "; then set Z zero again with it";
    return switch (controller.toolChange()) {
      case PROGRAM -> Optional.empty();
      case WORD -> Optional.of("by the machine, " + up + " above the sheet");
      case PAUSE ->
          Optional.of(
              "by hand: the program stops before each tool at X "
                  + lengths.number(place.x().orElse(0.0))
                  + ", Y "
                  + lengths.number(place.y().orElse(0.0))
                  + ", "
                  + up
                  + " above the sheet, spindle at rest"
                  + again);
    };
  }

  /** What the programs say beside their moves, where a person must have set or wired it. */
  private Optional<String> around() {
    ProgramFrame frame = machine.equipment().controller().frame();
    List<String> words = new ArrayList<>();
    if (frame.workOffset() != WorkOffset.G54) {
      words.add("X0 Y0 Z0 are set as " + frame.workOffset().name());
    }
    if (frame.beside() != Beside.NOTHING) {
      words.add(frame.beside().name() + " runs what is wired to it beside the spindle");
    }
    frame
        .park()
        .ifPresent(
            park ->
                words.add(
                    "at the end the spindle goes to X "
                        + lengths.number(park.x())
                        + ", Y "
                        + lengths.number(park.y())));
    return words.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", words));
  }

  private String words(KeepOut place, SheetOrigin origin) {
    Xy low = origin.from(place.corner().left(), place.corner().low());
    return place.name()
        + ": X "
        + lengths.number(low.x())
        + " to "
        + lengths.number(low.x() + place.size().width())
        + ", Y "
        + lengths.number(low.y())
        + " to "
        + lengths.number(low.y() + place.size().height())
        + ", up to "
        + lengths.number(place.rise())
        + " "
        + lengths.word()
        + " above the sheet";
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
}
