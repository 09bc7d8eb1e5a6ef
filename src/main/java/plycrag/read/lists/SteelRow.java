package plycrag.read.lists;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import plycrag.catalog.FlatSteel;
import plycrag.catalog.FlatSteel.Holes;
import plycrag.catalog.FlatSteel.Legs;
import plycrag.catalog.FlatSteel.ScrewSizes;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.geometry.Tolerance;
import plycrag.read.schema.NearestKey;
import plycrag.read.text.Context;
import plycrag.read.text.CsvField;
import plycrag.read.text.Located;
import plycrag.units.Printable;

/** A row of a catalogue of steel on its way to what it describes. */
final class SteelRow {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,6}(\\.[0-9]{1,6})?");
  private static final Pattern COUNT = Pattern.compile("[0-9]{1,6}");
  private static final List<String> SHAPES =
      Arrays.stream(Shape.values()).map(SteelRow::word).toList();
  private static final String YOURS = "your catalogue";

  private final ListHeader<SteelColumn> header;
  private final List<CsvField> fields;
  private final Context context;
  private boolean isSound = true;

  /**
   * @param header which column stands where
   * @param fields as they stand in the file
   * @param context what bare numbers mean, and where findings go
   */
  SteelRow(ListHeader<SteelColumn> header, List<CsvField> fields, Context context) {
    this.header = header;
    this.fields = fields;
    this.context = context;
  }

  /** What it describes, or nothing after saying what is wrong. */
  Optional<FlatSteel> steel() {
    Optional<Shape> shape = shape();
    String article = article();
    Legs legs =
        new Legs(needed(SteelColumn.LEG), needed(SteelColumn.WIDTH), needed(SteelColumn.THICKNESS));
    int lines = field(SteelColumn.LINES).isBlank() ? 1 : count(SteelColumn.LINES);
    int holes = count(SteelColumn.HOLES);
    Holes all =
        new Holes(
            holes,
            lines,
            needed(SteelColumn.FIRST),
            length(SteelColumn.PITCH).orElse(0.0),
            length(SteelColumn.GAUGE).orElse(0.0));
    double screw = needed(SteelColumn.SCREW);
    if (!isSound) {
      return Optional.empty();
    }
    FlatSteel steel =
        new FlatSteel(shape.orElseThrow(), article, legs, all, new ScrewSizes(screw, screw), YOURS);
    check(steel);
    return isSound ? Optional.of(steel) : Optional.empty();
  }

  private void check(FlatSteel steel) {
    Holes holes = steel.holes();
    if (holes.lines() > 2) {
      refuse(SteelColumn.LINES, "holes lie in one line or in two", "1 or 2 is allowed");
    } else if (holes.lines() == 2 && field(SteelColumn.GAUGE).isBlank()) {
      refuse(SteelColumn.GAUGE, "how far the two lines are apart is missing", "it is needed");
    } else if (holes.count() > holes.lines() && field(SteelColumn.PITCH).isBlank()) {
      refuse(SteelColumn.PITCH, "how far the holes of a line are apart is missing", "it is needed");
    } else if (Tolerance.isMore(steel.last(holes.count()), steel.legs().length())) {
      refuse(
          SteelColumn.HOLES,
          "the last hole lies beyond the end of the leg",
          "holes within the leg are allowed");
    } else if (Tolerance.isMore(holes.gauge(), steel.legs().width())) {
      refuse(
          SteelColumn.GAUGE, "the lines lie further apart than the leg is wide", "less is allowed");
    }
  }

  private Optional<Shape> shape() {
    CsvField field = field(SteelColumn.SHAPE);
    Optional<Shape> shape =
        Arrays.stream(Shape.values()).filter(one -> word(one).equals(field.text())).findFirst();
    if (shape.isEmpty()) {
      isSound = false;
      context
          .faults()
          .add(
              SteelColumn.SHAPE.word(),
              field.place(),
              Printable.quoted(field.text()) + " is not among the words for this",
              String.join(", ", SHAPES) + " are allowed",
              NearestKey.suggestion(field.text(), SHAPES, "word"));
    }
    return shape;
  }

  private static String word(Shape shape) {
    return shape.name().toLowerCase(Locale.ROOT);
  }

  private String article() {
    CsvField field = field(SteelColumn.ARTICLE);
    if (field.isBlank() || !Printable.isOneLine(field.text())) {
      refuse(
          SteelColumn.ARTICLE,
          "what it is sold as is missing",
          "a name on one line is needed, as the shop has it");
    }
    return field.text();
  }

  private double needed(SteelColumn column) {
    if (field(column).isBlank()) {
      refuse(column, "nothing stands here", "a length is needed");
    }
    return length(column).orElse(0.0);
  }

  /** A number without a unit is in that of the parameter file. */
  private Optional<Double> length(SteelColumn column) {
    CsvField field = field(column);
    if (field.isBlank()) {
      return Optional.empty();
    }
    boolean isBare = NUMBER.matcher(field.text()).matches();
    Object value = isBare ? Double.valueOf(field.text()) : field.text();
    Optional<Double> length =
        column.length().read(new Located(column.word(), field.place(), value), context);
    isSound &= length.isPresent();
    return length;
  }

  private int count(SteelColumn column) {
    CsvField field = field(column);
    boolean isWhole = COUNT.matcher(field.text()).matches();
    Object value = isWhole ? Long.valueOf(field.text()) : field.text();
    Optional<Integer> count =
        SteelColumn.COUNT.read(new Located(column.word(), field.place(), value), context);
    isSound &= count.isPresent();
    return count.orElse(1);
  }

  /** The field of a column; empty text where the row is shorter or the column is missing. */
  private CsvField field(SteelColumn column) {
    Integer index = header.columns().get(column);
    return index != null && index < fields.size()
        ? fields.get(index)
        : new CsvField(fields.get(0).place(), "");
  }

  private void refuse(SteelColumn column, String wrong, String allowed) {
    isSound = false;
    context.faults().add(column.word(), field(column).place(), wrong, allowed);
  }
}
