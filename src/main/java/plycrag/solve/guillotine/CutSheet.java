package plycrag.solve.guillotine;

import java.util.ArrayList;
import java.util.List;

/**
 * One sheet with how it is cut.
 *
 * @param kind which stock it is
 * @param whole what lies inside the trim margin
 */
public record CutSheet(StockKind kind, Part whole) {

  /** The items, in the order in which the cuts free them. */
  public List<CutItem> items() {
    return parts(CutItem.class);
  }

  /** What is left over, in the order in which the cuts free it. */
  public List<Offcut> offcuts() {
    return parts(Offcut.class);
  }

  private <T extends Part> List<T> parts(Class<T> wanted) {
    List<T> found = new ArrayList<>();
    collect(whole, wanted, found);
    return List.copyOf(found);
  }

  private static <T extends Part> void collect(Part part, Class<T> wanted, List<T> found) {
    if (wanted.isInstance(part)) {
      found.add(wanted.cast(part));
    }
    if (part instanceof Cut cut) {
      collect(cut.near(), wanted, found);
      cut.far().ifPresent(far -> collect(far, wanted, found));
    }
  }
}
