package plycrag.read.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.catalog.FlatSteel;
import plycrag.finding.Finding;
import plycrag.read.Reading;
import plycrag.read.text.Context;
import plycrag.read.text.CsvField;
import plycrag.read.text.CsvRows;
import plycrag.read.text.Faults;
import plycrag.read.text.SourcePlace;
import plycrag.read.text.SourceText;
import plycrag.units.LengthUnit;

/**
 * Reads a catalogue of brackets, straps and hinges: a CSV file whose first row names its columns.
 * Lines that begin with {@code #} are remarks.
 *
 * <p>{@code shape} (angle, strap or hinge), {@code article} (what it is sold as), {@code leg} (from
 * the bend, the middle or the pin to the end of each of its two legs), {@code width}, {@code
 * thickness}, {@code holes} (in each leg), {@code first} (from the bend, the middle or the pin to
 * the first hole) and {@code screw} (their diameter) are needed; {@code lines} (in which the holes
 * lie along a leg, 1 or 2), {@code pitch} (from hole to hole along a line) and {@code gauge}
 * (between two lines) where there are several. Lengths have a unit, or are in that of the parameter
 * file.
 */
public final class SteelFile {
  private final Context context;
  private final List<FlatSteel> steel = new ArrayList<>();

  private SteelFile(Context context) {
    this.context = context;
  }

  /**
   * Reads a catalogue.
   *
   * @param fileName as messages name it
   * @param content its bytes
   * @param unit of the parameter file that names it
   * @return what is in it, in its order, or everything that is wrong; no content makes it throw
   */
  public static Reading<List<FlatSteel>> read(String fileName, byte[] content, LengthUnit unit) {
    Faults faults = new Faults(fileName);
    SteelFile file = new SteelFile(new Context(Optional.of(unit), faults));
    SourceText.decode(content, faults).ifPresent(file::read);
    List<Finding> findings = faults.sorted();
    return new Reading<>(
        findings.isEmpty() ? Optional.of(List.copyOf(file.steel)) : Optional.empty(), findings);
  }

  private void read(String text) {
    Faults faults = context.faults();
    List<List<CsvField>> rows = CsvRows.of(text, faults);
    if (rows.isEmpty()) {
      faults.add(
          "columns", SourcePlace.START, "there is no row", "a first row with columns is needed");
      return;
    }
    ListHeader<SteelColumn> header =
        ListHeader.of(rows.get(0), "a catalogue of steel", List.of(SteelColumn.values()), faults);
    if (faults.sorted().isEmpty()) {
      rows.subList(1, rows.size())
          .forEach(fields -> new SteelRow(header, fields, context).steel().ifPresent(steel::add));
    }
  }
}
