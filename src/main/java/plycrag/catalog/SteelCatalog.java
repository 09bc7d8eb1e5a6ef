package plycrag.catalog;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import plycrag.catalog.FlatSteel.Holes;
import plycrag.catalog.FlatSteel.Legs;
import plycrag.catalog.FlatSteel.ScrewSizes;
import plycrag.catalog.FlatSteel.Shape;

/** The brackets, straps and hinges that are sold. */
public final class SteelCatalog {
  private static final List<FlatSteel> ROWS =
      CatalogFile.rows("steel.csv").stream().map(SteelCatalog::steel).toList();

  private static final Map<Shape, List<FlatSteel>> BY_SHAPE =
      Arrays.stream(Shape.values())
          .collect(Collectors.toMap(Function.identity(), SteelCatalog::sorted));

  private SteelCatalog() {}

  /** All rows, in the order of the table. */
  static List<FlatSteel> all() {
    return ROWS;
  }

  /** Those of a shape, with the thickest screws first and of these the smallest first. */
  public static List<FlatSteel> of(Shape shape) {
    return BY_SHAPE.get(shape);
  }

  private static List<FlatSteel> sorted(Shape shape) {
    return ROWS.stream()
        .filter(steel -> steel.shape() == shape)
        .sorted(
            Comparator.<FlatSteel>comparingDouble(steel -> steel.screws().metric())
                .reversed()
                .thenComparingDouble(steel -> steel.legs().length() * steel.legs().width()))
        .toList();
  }

  private static FlatSteel steel(CSVRecord row) {
    return new FlatSteel(
        Shape.valueOf(row.get("shape").toUpperCase(Locale.ROOT)),
        new Legs(number(row, "leg_mm"), number(row, "width_mm"), number(row, "thickness_mm")),
        holes(row),
        new ScrewSizes(number(row, "screw_mm"), number(row, "inch_screw_mm")),
        row.get("source"));
  }

  private static Holes holes(CSVRecord row) {
    return new Holes(
        Integer.parseInt(row.get("holes")),
        Integer.parseInt(row.get("lines")),
        number(row, "first_mm"),
        number(row, "pitch_mm"),
        number(row, "gauge_mm"));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
