package plycrag.read.lists;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plycrag.prices.Article;
import plycrag.prices.Offer;
import plycrag.prices.SaleUnit;
import plycrag.read.schema.NearestKey;
import plycrag.read.text.CsvField;
import plycrag.read.text.Faults;
import plycrag.units.Printable;

/** A row of a price list on its way to an offer. */
final class PriceRow {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,4})?");
  private static final Pattern COUNT = Pattern.compile("[0-9]{1,6}");
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

  private final ListHeader<PriceColumn> header;
  private final List<CsvField> fields;
  private final Faults faults;

  /**
   * One row.
   *
   * @param header which column stands where
   * @param fields as they stand in the file
   * @param faults where findings go
   */
  PriceRow(ListHeader<PriceColumn> header, List<CsvField> fields, Faults faults) {
    this.header = header;
    this.fields = fields;
    this.faults = faults;
  }

  private record Sold(Article article, List<Double> size, SaleUnit unit, BigDecimal contents) {}

  /** The offer, or none after saying what is wrong. */
  Optional<Offer> offer() {
    Optional<Sold> sold = sold();
    boolean hasCurrency = checkCurrency();
    Optional<Optional<BigDecimal>> price = number(PriceColumn.PRICE);
    Optional<Optional<BigDecimal>> tax = number(PriceColumn.TAX);
    Optional<Optional<BigDecimal>> mass = number(PriceColumn.MASS);
    Optional<Optional<Integer>> available = sold.flatMap(this::available);
    return hasCurrency && price.isPresent() && tax.isPresent() && mass.isPresent()
        ? available.map(most -> offer(sold.get(), price.get(), tax.get(), mass.get(), most))
        : Optional.empty();
  }

  private static Offer offer(
      Sold sold,
      Optional<BigDecimal> price,
      Optional<BigDecimal> tax,
      Optional<BigDecimal> mass,
      Optional<Integer> available) {
    return new Offer(
        sold.article(),
        sold.size(),
        sold.unit(),
        sold.contents(),
        price,
        tax.orElse(BigDecimal.ZERO),
        mass,
        available);
  }

  /** How many sticks of one length there are: that alone is counted. */
  private Optional<Optional<Integer>> available(Sold sold) {
    CsvField field = field(PriceColumn.AVAILABLE);
    if (field.isBlank()) {
      return Optional.of(Optional.empty());
    }
    boolean isStick =
        sold.article() == Article.TIMBER && sold.unit() == SaleUnit.PIECE && !sold.size().isEmpty();
    if (isStick && COUNT.matcher(field.text()).matches()) {
      return Optional.of(Optional.of(Integer.valueOf(field.text())));
    }
    refuse(
        PriceColumn.AVAILABLE,
        isStick
            ? Printable.quoted(field.text()) + " is no number of sticks"
            : "only sticks of one length are counted: timber by the piece, with its size",
        isStick
            ? "a whole number of 0 or more is allowed, or an empty field for as many as are wanted"
            : "an empty field is allowed",
        "");
    return Optional.empty();
  }

  private Optional<Sold> sold() {
    Optional<Article> article = word(PriceColumn.ARTICLE, Article::find, Article.words());
    Optional<SaleUnit> unit = word(PriceColumn.UNIT, SaleUnit::find, SaleUnit.words());
    if (unit.isEmpty()) {
      return Optional.empty();
    }
    Optional<BigDecimal> contents = contents(unit.get());
    Optional<List<Double>> size = article.flatMap(of -> size(of, unit.get()));
    return size.isPresent() && contents.isPresent()
        ? Optional.of(new Sold(article.get(), size.get(), unit.get(), contents.get()))
        : Optional.empty();
  }

  /** The field of a column; empty text where the row is shorter or the column is missing. */
  CsvField field(PriceColumn column) {
    Integer index = header.columns().get(column);
    return index != null && index < fields.size()
        ? fields.get(index)
        : new CsvField(fields.get(0).place(), "");
  }

  private interface Finder<T> {
    Optional<T> find(String word);
  }

  private <T> Optional<T> word(PriceColumn column, Finder<T> finder, List<String> words) {
    CsvField field = field(column);
    Optional<T> found = finder.find(field.text());
    if (found.isEmpty() && header.columns().containsKey(column)) {
      refuse(
          column,
          field.isBlank()
              ? "nothing stands here"
              : Printable.quoted(field.text()) + " is not among the words for this",
          String.join(", ", words) + " are allowed",
          NearestKey.suggestion(field.text(), words, "word"));
    }
    return found;
  }

  private boolean checkCurrency() {
    CsvField field = field(PriceColumn.CURRENCY);
    boolean fits = CURRENCY.matcher(field.text()).matches();
    if (!fits && header.columns().containsKey(PriceColumn.CURRENCY)) {
      refuse(
          PriceColumn.CURRENCY,
          Printable.quoted(field.text()) + " is no currency",
          "three capital letters are allowed, such as EUR",
          "");
    }
    return fits;
  }

  /** How many are in a pack: needed there, and nowhere else. */
  private Optional<BigDecimal> contents(SaleUnit unit) {
    Optional<Optional<BigDecimal>> given = number(PriceColumn.CONTENTS);
    if (given.isEmpty()) {
      return Optional.empty();
    }
    boolean isPack = unit == SaleUnit.PACK;
    boolean isPositive = given.get().stream().allMatch(number -> number.signum() > 0);
    if (given.get().isPresent() == isPack && isPositive) {
      return Optional.of(given.get().orElse(BigDecimal.ONE));
    }
    refuse(
        PriceColumn.CONTENTS,
        isPack ? "how much a pack holds is missing" : "what is sold in no pack has contents",
        isPack ? "a number above 0 is needed" : "an empty field is allowed",
        "");
    return Optional.empty();
  }

  /** A number, an open field, or nothing after saying what is wrong. */
  private Optional<Optional<BigDecimal>> number(PriceColumn column) {
    CsvField field = field(column);
    if (field.isBlank()) {
      return Optional.of(Optional.empty());
    }
    if (NUMBER.matcher(field.text()).matches()) {
      return Optional.of(Optional.of(new BigDecimal(field.text())));
    }
    boolean comma = field.text().contains(",");
    refuse(
        column,
        Printable.quoted(field.text())
            + (comma ? " has a decimal comma" : " is not a number of 0 or more"),
        comma
            ? "a decimal point is allowed, as in 12.50"
            : "digits with at most 4 after a point are allowed, as in 12.50, or an empty field",
        "");
    return Optional.empty();
  }

  private Optional<List<Double>> size(Article article, SaleUnit unit) {
    CsvField field = field(PriceColumn.SIZE);
    if (unit == SaleUnit.METRE && article != Article.TIMBER) {
      refuse(
          PriceColumn.UNIT,
          article.word() + " is not sold by the metre",
          "piece and pack are allowed",
          "");
      return Optional.empty();
    }
    if (field.isBlank()) {
      return Optional.of(List.of());
    }
    Optional<List<Double>> size = new SizeText(field.text()).lengths();
    int sides = article.sides(unit);
    if (size.isEmpty() || size.get().size() != sides) {
      refuse(
          PriceColumn.SIZE,
          Printable.quoted(field.text()) + " is not the size of a " + article.word(),
          allowedSize(article),
          "");
      return Optional.empty();
    }
    return size;
  }

  private static String allowedSize(Article article) {
    return article.sizeWords().isEmpty()
        ? "an empty field is allowed"
        : article.sizeWords()
            + " with a unit at the end is allowed, or an empty field for any size";
  }

  private void refuse(PriceColumn column, String wrong, String allowed, String suggestion) {
    faults.add(column.word(), field(column).place(), wrong, allowed, suggestion);
  }
}
