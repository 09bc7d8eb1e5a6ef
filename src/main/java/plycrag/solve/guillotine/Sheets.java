package plycrag.solve.guillotine;

import java.util.Arrays;

/** Sheets being filled: for each its kind, and its slice or null while it is empty. */
final class Sheets {
  private final GuillotineTask job;
  private final int[] kinds;
  private final Slice[] slices;

  Sheets(GuillotineTask job, int[] kinds) {
    this.job = job;
    this.kinds = kinds.clone();
    slices = new Slice[kinds.length];
  }

  /** The same with one more empty sheet. */
  Sheets with(int kind) {
    int[] more = Arrays.copyOf(kinds, kinds.length + 1);
    more[kinds.length] = kind;
    Sheets grown = new Sheets(job, more);
    System.arraycopy(slices, 0, grown.slices, 0, slices.length);
    return grown;
  }

  /** The same without its empty sheets. */
  Sheets withoutEmpty() {
    int[] filled = Arrays.stream(all()).filter(sheet -> slices[sheet] != null).toArray();
    Sheets kept = new Sheets(job, Arrays.stream(filled).map(sheet -> kinds[sheet]).toArray());
    for (int place = 0; place < filled.length; place++) {
      kept.slices[place] = slices[filled[place]];
    }
    return kept;
  }

  int count() {
    return kinds.length;
  }

  /** Every sheet's number. */
  int[] all() {
    int[] numbers = new int[kinds.length];
    Arrays.setAll(numbers, number -> number);
    return numbers;
  }

  int kind(int sheet) {
    return kinds[sheet];
  }

  Slice slice(int sheet) {
    return slices[sheet];
  }

  void set(int sheet, Slice slice) {
    slices[sheet] = slice;
  }

  int width(int sheet) {
    return job.sheetWidth(kinds[sheet]);
  }

  int height(int sheet) {
    return job.sheetHeight(kinds[sheet]);
  }

  long area(int sheet) {
    return job.sheetArea(kinds[sheet]);
  }

  long price() {
    return Arrays.stream(kinds).mapToLong(kind -> job.stock.get(kind).price()).sum();
  }

  /** Share of a sheet that its items take, kerfs included. */
  double fill(int sheet) {
    return slices[sheet] == null ? 0 : (double) slices[sheet].area / area(sheet);
  }
}
