package plycrag.read.lists;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import plycrag.finding.Finding;
import plycrag.read.Parameters;
import plycrag.read.Reading;
import plycrag.read.schema.LengthKind;
import plycrag.read.text.Context;
import plycrag.read.text.CsvField;
import plycrag.read.text.CsvRows;
import plycrag.read.text.Faults;
import plycrag.read.text.Located;
import plycrag.read.text.SourcePlace;
import plycrag.read.text.SourceText;
import plycrag.units.LengthUnit;
import plycrag.units.NearestWord;
import plycrag.units.Printable;
import plycrag.wall.GivenFacet;
import plycrag.wall.InsertPosition;

/**
 * Reads a list of positions: a CSV file whose first row names its columns. Lines that begin with
 * {@code #} are remarks.
 *
 * <p>{@code u} and {@code v} are needed: from a facet's left and from its lower edge, up the slope,
 * with a unit or in that of the parameter file. {@code facet} may stand where there is only one.
 * Whether there is a facet at a place is the layout's to judge.
 */
public final class PositionFile {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,6}(\\.[0-9]{1,6})?");
  private static final LengthKind PLACE = LengthKind.length(0, 50_000);

  private final List<String> facets;
  private final Context context;
  private final EnumMap<Column, Integer> header = new EnumMap<>(Column.class);
  private final Map<InsertPosition, SourcePlace> positions = new HashMap<>();
  private final List<InsertPosition> inOrder = new ArrayList<>();

  private enum Column {
    FACET,
    U,
    V;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private PositionFile(List<String> facets, Context context) {
    this.facets = facets;
    this.context = context;
  }

  /**
   * Reads a list.
   *
   * @param fileName as messages name it
   * @param content its bytes
   * @param parameters the file that names it
   * @return the positions, or everything that is wrong; no content makes it throw
   */
  public static Reading<List<InsertPosition>> read(
      String fileName, byte[] content, Parameters parameters) {
    Faults faults = new Faults(fileName);
    LengthUnit unit = parameters.wall().unit();
    List<String> facets = parameters.facets().stream().map(GivenFacet::name).toList();
    PositionFile file = new PositionFile(facets, new Context(Optional.of(unit), faults));
    SourceText.decode(content, faults).ifPresent(file::read);
    List<Finding> findings = faults.sorted();
    return new Reading<>(
        findings.isEmpty() ? Optional.of(List.copyOf(file.inOrder)) : Optional.empty(), findings);
  }

  private void read(String text) {
    List<List<CsvField>> rows = CsvRows.of(text, context.faults());
    if (rows.isEmpty()) {
      refuse("columns", SourcePlace.START, "there is no row", "a first row with columns is needed");
      return;
    }
    readHeader(rows.get(0));
    if (header.containsKey(Column.U) && header.containsKey(Column.V)) {
      rows.subList(1, rows.size()).forEach(fields -> readRow(rows.get(0).size(), fields));
    }
  }

  private void readHeader(List<CsvField> row) {
    for (int at = 0; at < row.size(); at++) {
      CsvField field = row.get(at);
      int index = at;
      Optional<Column> column = find(field.text());
      column.ifPresent(one -> addColumn(one, index, field));
      if (column.isEmpty()) {
        refuse(
            "columns",
            field.place(),
            Printable.quoted(field.text()) + " is not a column of a list of positions",
            "facet, u and v are allowed, with commas between");
      }
    }
    boolean whole = header.containsKey(Column.U) && header.containsKey(Column.V);
    if (!whole || (facets.size() > 1 && !header.containsKey(Column.FACET))) {
      refuse(
          "columns",
          row.get(0).place(),
          "the first row does not name all columns",
          facets.size() > 1 ? "facet, u and v are needed" : "u and v are needed");
    }
  }

  private static Optional<Column> find(String word) {
    for (Column column : Column.values()) {
      if (column.word().equals(word)) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  private void addColumn(Column column, int at, CsvField field) {
    if (header.putIfAbsent(column, at) != null) {
      refuse(column.word(), field.place(), "this column stands twice", "once is allowed");
    }
  }

  private void readRow(int columns, List<CsvField> fields) {
    if (fields.size() != columns) {
      refuse(
          "columns",
          fields.get(0).place(),
          "this row has " + fields.size() + " fields",
          "as many as there are columns, " + columns + ", are allowed");
      return;
    }
    Optional<String> facet = facet(fields);
    Optional<Double> u = place(Column.U, fields);
    Optional<Double> v = place(Column.V, fields);
    if (facet.isPresent() && u.isPresent() && v.isPresent()) {
      add(new InsertPosition(facet.get(), u.get(), v.get()), fields.get(0).place());
    }
  }

  private void add(InsertPosition position, SourcePlace place) {
    SourcePlace first = positions.putIfAbsent(position, place);
    if (first != null) {
      refuse(
          "columns",
          place,
          "this position stands in line " + first.line() + " already",
          "once is allowed");
    }
    inOrder.add(position);
  }

  private Optional<String> facet(List<CsvField> fields) {
    if (!header.containsKey(Column.FACET)) {
      return facets.size() == 1 ? Optional.of(facets.get(0)) : Optional.empty();
    }
    CsvField field = fields.get(header.get(Column.FACET));
    if (facets.contains(field.text())) {
      return Optional.of(field.text());
    }
    context
        .faults()
        .add(
            Column.FACET.word(),
            field.place(),
            "there is no facet " + Printable.quoted(field.text()),
            "one of " + String.join(", ", facets) + " is allowed",
            NearestWord.find(field.text(), facets)
                .map(near -> "the nearest facet is " + near)
                .orElse(""));
    return Optional.empty();
  }

  /** A number without a unit is in that of the parameter file. */
  private Optional<Double> place(Column column, List<CsvField> fields) {
    CsvField field = fields.get(header.get(column));
    boolean isBare = NUMBER.matcher(field.text()).matches();
    Object value = isBare ? Double.valueOf(field.text()) : field.text();
    return PLACE.read(new Located(column.word(), field.place(), value), context);
  }

  private void refuse(String key, SourcePlace place, String wrong, String allowed) {
    context.faults().add(key, place, wrong, allowed);
  }
}
