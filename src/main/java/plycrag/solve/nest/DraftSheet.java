package plycrag.solve.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import plycrag.solve.nest.NestTask.Lying;

/** A laid sheet before it is turned and marked, its length along x. */
final class DraftSheet {
  private static final Comparator<Spot> BY_SIZE =
      Comparator.comparingDouble((Spot spot) -> spot.bundle().width())
          .thenComparingDouble(spot -> spot.bundle().height());

  private final SheetKind kind;
  private final List<Spot> spots;
  private final SheetCutting cutting;

  /**
   * @param kind what it is laid on
   * @param spots where bundles lie
   * @param cutting how it comes apart
   */
  DraftSheet(SheetKind kind, List<Spot> spots, SheetCutting cutting) {
    this.kind = kind;
    this.spots = List.copyOf(spots);
    this.cutting = cutting;
  }

  /** A bundle at a place of its lower left corner, turned by 90° or not. */
  record Spot(Bundle bundle, double x, double y, boolean turned) {
    boolean isLike(Spot other) {
      return BY_SIZE.compare(this, other) == 0;
    }

    Spot holding(Bundle other) {
      return new Spot(other, x, y, turned);
    }

    Spot transposed() {
      return new Spot(bundle, y, x, turned);
    }
  }

  /** The number of its first blank. */
  int number() {
    return spots.stream().mapToInt(spot -> spot.bundle().number()).min().orElseThrow();
  }

  /** Whether both hold bundles of the same sizes on the same kind. */
  boolean isLike(DraftSheet other) {
    List<Spot> ours = sorted();
    List<Spot> theirs = other.sorted();
    return kind.equals(other.kind)
        && ours.size() == theirs.size()
        && IntStream.range(0, ours.size()).allMatch(at -> ours.get(at).isLike(theirs.get(at)));
  }

  private List<Spot> sorted() {
    return spots.stream().sorted(BY_SIZE).toList();
  }

  /** These bundles, laid and cut as another draft is that is like this one. */
  DraftSheet laidAs(DraftSheet other) {
    List<Spot> ours = sorted();
    List<Spot> theirs = other.sorted();
    List<Spot> laid = new ArrayList<>();
    for (int at = 0; at < ours.size(); at++) {
      laid.add(theirs.get(at).holding(ours.get(at).bundle()));
    }
    return new DraftSheet(kind, laid, other.cutting);
  }

  /** The sheet as it is to lie. */
  StockSheet marked(String mark, List<Blank> blanks, Lying lying) {
    boolean upright = isUpright(blanks, lying);
    List<LaidBlank> laid = new ArrayList<>();
    for (Spot spot : spots) {
      Spot placed = upright ? spot.transposed() : spot;
      Turn turn = upright == spot.turned() ? Turn.NONE : Turn.QUARTER;
      laid.addAll(spot.bundle().at(turn, placed.x(), placed.y()));
    }
    List<String> order = blanks.stream().map(Blank::mark).toList();
    laid.sort(Comparator.comparingInt(blank -> order.indexOf(blank.mark())));
    return new StockSheet(mark, kind, upright, laid, upright ? cutting.transposed() : cutting);
  }

  private boolean isUpright(List<Blank> blanks, Lying lying) {
    Spot first =
        spots.stream().filter(spot -> spot.bundle().number() == number()).findAny().orElseThrow();
    boolean lengthIsLonger = kind.length() >= kind.width();
    return switch (lying) {
      case AS_BUILT -> blanks.get(number()).lengthAcross() == first.turned();
      case LONG_ALONG_X -> !lengthIsLonger;
      case LONG_ALONG_Y -> lengthIsLonger;
    };
  }
}
