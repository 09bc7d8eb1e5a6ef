package plycrag.catalog;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import plycrag.catalog.FlatSteel.Holes;
import plycrag.catalog.FlatSteel.Legs;
import plycrag.catalog.FlatSteel.ScrewSizes;
import plycrag.catalog.FlatSteel.Shape;

/**
 * The brackets, straps and hinges that may be taken: those of a user's own catalogue, and after
 * them sizes that are asked for by what they must be, since no open table says what is sold.
 *
 * @param own of the user, in their order
 */
public record SteelCatalog(List<FlatSteel> own) {
  /** Without any of a user's. */
  public static final SteelCatalog BY_REQUIREMENT = new SteelCatalog(List.of());

  private static final List<FlatSteel> ROWS =
      CatalogFile.rows("steel.csv").stream().map(SteelCatalog::steel).toList();

  private static final Map<Shape, List<FlatSteel>> BY_SHAPE =
      Arrays.stream(Shape.values())
          .collect(Collectors.toMap(Function.identity(), shape -> sorted(shape, ROWS).toList()));

  /** Copies the list. */
  public SteelCatalog {
    own = List.copyOf(own);
  }

  /** All rows of the table, in its order. */
  static List<FlatSteel> all() {
    return ROWS;
  }

  /** Those of a shape, a user's first, with the thickest screws first and then the smallest. */
  public List<FlatSteel> of(Shape shape) {
    return Stream.concat(sorted(shape, own), BY_SHAPE.get(shape).stream()).toList();
  }

  private static Stream<FlatSteel> sorted(Shape shape, List<FlatSteel> rows) {
    return rows.stream()
        .filter(steel -> steel.shape() == shape)
        .sorted(
            Comparator.<FlatSteel>comparingDouble(steel -> steel.screws().metric())
                .reversed()
                .thenComparingDouble(steel -> steel.legs().length() * steel.legs().width()));
  }

  private static FlatSteel steel(CSVRecord row) {
    return new FlatSteel(
        Shape.valueOf(row.get("shape").toUpperCase(Locale.ROOT)),
        "",
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
