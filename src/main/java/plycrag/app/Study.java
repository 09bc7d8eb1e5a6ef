package plycrag.app;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import plycrag.document.Book;
import plycrag.document.Cell;
import plycrag.document.Drawing;
import plycrag.document.Table;
import plycrag.files.OutputFile;
import plycrag.files.csv.CsvWriter;
import plycrag.files.html.HtmlWriter;
import plycrag.files.svg.SvgWriter;
import plycrag.units.Count;

/**
 * Variants of one wall beside each other.
 *
 * @param wall its name
 * @param keys that vary
 * @param variants all of them, in the order of their values
 */
record Study(String wall, List<Vary> keys, List<Variant> variants) {
  private static final List<String> FIGURES =
      List.of(
          "cost",
          "mass_kg",
          "inserts",
          "sheets",
          "sticks",
          "sheet_waste_percent",
          "stick_waste_percent",
          "largest_utilisation",
          "strength_lines_failing",
          "errors",
          "warnings",
          "unbeaten");

  /** Copies the lists. */
  Study {
    keys = List.copyOf(keys);
    variants = List.copyOf(variants);
  }

  /** All values of the keys, each with each; the last key varies fastest. */
  static List<List<String>> combinations(List<Vary> keys) {
    List<List<String>> all = List.of(List.of());
    for (Vary key : keys) {
      all =
          all.stream()
              .flatMap(
                  one ->
                      key.values().stream()
                          .map(value -> Stream.concat(one.stream(), Stream.of(value)).toList()))
              .toList();
    }
    return all;
  }

  /**
   * Lays all variants out, side by side.
   *
   * @param file the wall that varies
   * @param text what it holds
   * @param done how many are over
   */
  static Study of(Source file, String text, List<Vary> keys, AtomicInteger done) {
    List<Variant> variants =
        combinations(keys).parallelStream()
            .map(
                values -> {
                  Variant variant = variant(file, text, keys, values);
                  done.incrementAndGet();
                  return variant;
                })
            .toList();
    return new Study(file.stem(), keys, variants);
  }

  private static Variant variant(Source file, String text, List<Vary> keys, List<String> values) {
    EditedText edited = new EditedText(text);
    for (int at = 0; at < keys.size(); at++) {
      edited = edited.with(keys.get(at), values.get(at));
    }
    byte[] content = edited.text().getBytes(StandardCharsets.UTF_8);
    try {
      Design design = Inputs.of(new Source(file.path(), () -> content)).design();
      if (design instanceof Design.Judged judged) {
        return new Variant(values, Optional.of(Tally.of(judged)), "");
      }
      String fault = ((Design.Unreadable) design).findings().get(0).sentence();
      return new Variant(values, Optional.empty(), fault);
    } catch (Source.SourceException e) {
      return new Variant(values, Optional.empty(), e.getMessage());
    }
  }

  /** The files of its folder. */
  List<OutputFile> files() {
    List<Drawing> plots = StudyPlots.of(this);
    List<OutputFile> files = new ArrayList<>();
    files.add(OutputFile.text("study.csv", CsvWriter.write(table())));
    for (int at = 0; at < plots.size(); at++) {
      files.add(OutputFile.text("plot-" + (at + 1) + ".svg", SvgWriter.write(plots.get(at))));
    }
    files.add(OutputFile.text("index.html", page(plots)));
    return files;
  }

  /** A row a variant. */
  Table table() {
    List<String> columns = new ArrayList<>(keys.stream().map(Vary::name).toList());
    columns.addAll(FIGURES);
    List<List<Cell>> rows = new ArrayList<>();
    for (Variant variant : variants) {
      List<Cell> row = new ArrayList<>();
      variant.values().forEach(value -> row.add(cell(value)));
      row.addAll(variant.cells(variant.isBest(variants)));
      rows.add(row);
    }
    return new Table("Variants of " + wall, columns, rows);
  }

  private static Cell cell(String value) {
    int point = value.indexOf('.');
    return Cell.number(Double.parseDouble(value), point < 0 ? 0 : value.length() - point - 1);
  }

  /** How many may be made, and how many of them nothing beats. */
  String summary() {
    long sound =
        variants.stream().filter(one -> one.tally().filter(Tally::isSound).isPresent()).count();
    long best = variants.stream().filter(one -> one.isBest(variants)).count();
    return Count.of(variants.size(), "variant")
        + ", "
        + sound
        + " of which may be made; "
        + best
        + " of these nothing beats in price, mass, inserts, sheets and sticks together.";
  }

  private String page(List<Drawing> plots) {
    List<Book.Block> blocks = new ArrayList<>();
    blocks.add(new Book.Paragraph(summary()));
    plots.forEach(
        plot -> blocks.add(new Book.Figure(plot, "Filled: what nothing beats. Crossed: refused.")));
    blocks.add(new Book.Listing(table()));
    Book book =
        new Book(
            wall,
            "A study of variants",
            "",
            "For comparison alone; build the variant that you choose.",
            List.of(new Book.Section("Variants", blocks)));
    return HtmlWriter.writeSheet(book, SvgWriter::inline);
  }
}
