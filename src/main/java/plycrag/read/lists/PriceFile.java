package plycrag.read.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.finding.Finding;
import plycrag.prices.Offer;
import plycrag.prices.PriceList;
import plycrag.read.Reading;
import plycrag.read.text.CsvField;
import plycrag.read.text.CsvRows;
import plycrag.read.text.Faults;
import plycrag.read.text.SourcePlace;
import plycrag.read.text.SourceText;

/**
 * Reads a price list: a CSV file whose first row names its columns. Lines that begin with {@code #}
 * are remarks.
 *
 * <p>{@code article}, {@code unit}, {@code price} and {@code currency} are needed; {@code size},
 * {@code contents} (of a pack), {@code tax} (percent, added to the price), {@code mass} (kg) and
 * {@code available} (so many sticks of this length, and no more) may stand. An empty price is open,
 * not zero. All prices are in one currency.
 */
public final class PriceFile {
  private final Faults faults;
  private final List<Offer> offers = new ArrayList<>();
  private String currency = "";

  private PriceFile(Faults faults) {
    this.faults = faults;
  }

  /**
   * Reads a list.
   *
   * @param fileName as messages name it
   * @param content its bytes
   * @return the prices, or everything that is wrong; no content makes it throw
   */
  public static Reading<PriceList> read(String fileName, byte[] content) {
    Faults faults = new Faults(fileName);
    PriceFile file = new PriceFile(faults);
    SourceText.decode(content, faults).ifPresent(file::read);
    List<Finding> findings = faults.sorted();
    Optional<PriceList> prices =
        findings.isEmpty()
            ? Optional.of(new PriceList(file.currency, file.offers))
            : Optional.empty();
    return new Reading<>(prices, findings);
  }

  private void read(String text) {
    List<List<CsvField>> rows = CsvRows.of(text, faults);
    if (rows.isEmpty()) {
      faults.add(
          "columns", SourcePlace.START, "there is no row", "a first row with columns is needed");
      return;
    }
    ListHeader<PriceColumn> header =
        ListHeader.of(rows.get(0), "a price list", List.of(PriceColumn.values()), faults);
    if (header.columns().isEmpty()) {
      return;
    }
    for (List<CsvField> fields : rows.subList(1, rows.size())) {
      PriceRow row = new PriceRow(header, fields, faults);
      checkWidth(rows.get(0).size(), fields);
      row.offer().ifPresent(offer -> add(offer, row));
    }
  }

  private void checkWidth(int columns, List<CsvField> fields) {
    if (fields.size() > columns) {
      faults.add(
          "columns",
          fields.get(columns).place(),
          "this row has more fields than there are columns",
          columns + " are allowed");
    }
  }

  private void add(Offer offer, PriceRow row) {
    CsvField money = row.field(PriceColumn.CURRENCY);
    currency = currency.isEmpty() ? money.text() : currency;
    if (!currency.equals(money.text())) {
      faults.add(
          "currency",
          money.place(),
          "this list has prices in " + currency + " and in " + money.text(),
          "one currency in a list is allowed");
    }
    if (offers.stream().anyMatch(offer::isLike)) {
      faults.add(
          "article",
          row.field(PriceColumn.ARTICLE).place(),
          "a row above offers the same article of this size in the same unit",
          "one of them is allowed");
    }
    offers.add(offer);
  }
}
