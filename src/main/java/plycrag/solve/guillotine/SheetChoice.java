package plycrag.solve.guillotine;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How many sheets of each kind.
 *
 * @param price of all
 * @param sheets how many there are
 * @param area of all, kerfs included, µm²
 */
record SheetChoice(List<Integer> counts, long price, int sheets, long area) {

  static SheetChoice of(GuillotineTask job, int[] counts) {
    long price = 0;
    long area = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      price += counts[kind] * job.stock.get(kind).price();
      area += counts[kind] * job.sheetArea(kind);
    }
    return new SheetChoice(
        Arrays.stream(counts).boxed().toList(), price, Arrays.stream(counts).sum(), area);
  }

  static SheetChoice of(GuillotineTask job, Sheets sheets) {
    int[] counts = new int[job.stock.size()];
    for (int sheet : sheets.all()) {
      counts[sheets.kind(sheet)]++;
    }
    return of(job, counts);
  }

  /** Costs less, or the same with fewer sheets. */
  boolean isBetterThan(SheetChoice other) {
    return price < other.price || (price == other.price && sheets < other.sheets);
  }

  /** Has no sheet that the other has not. */
  boolean isWithin(SheetChoice other) {
    return IntStream.range(0, counts.size())
        .allMatch(kind -> counts.get(kind) <= other.counts.get(kind));
  }

  /** The kind of every sheet. */
  int[] kinds() {
    return IntStream.range(0, counts.size())
        .flatMap(kind -> IntStream.generate(() -> kind).limit(counts.get(kind)))
        .toArray();
  }
}
