package plycrag.catalog;

import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/** The strength classes of sawn softwood whose values are known. */
public final class StrengthCatalog {
  private static final List<StrengthClass> ROWS =
      CatalogFile.rows("strength.csv").stream().map(StrengthCatalog::row).toList();

  private StrengthCatalog() {}

  /** All rows, in the order of the table. */
  public static List<StrengthClass> all() {
    return ROWS;
  }

  /** The class of that very name: a grade that only resembles one has none. */
  public static Optional<StrengthClass> find(String name) {
    return ROWS.stream().filter(one -> one.name().equals(name)).findFirst();
  }

  private static StrengthClass row(CSVRecord row) {
    return new StrengthClass(
        row.get("name"),
        number(row, "f_m_k"),
        number(row, "f_t_0_k"),
        number(row, "f_c_0_k"),
        number(row, "f_c_90_k"),
        number(row, "f_v_k"),
        new StrengthClass.Moduli(
            number(row, "e_0_mean"), number(row, "e_0_05"), number(row, "g_mean")),
        number(row, "rho_k"),
        number(row, "rho_mean"),
        row.get("source"));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
