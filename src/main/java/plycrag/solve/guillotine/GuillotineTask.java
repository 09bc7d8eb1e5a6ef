package plycrag.solve.guillotine;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The task in whole µm, every size one kerf larger. An item of a kerf more in a sheet of a kerf
 * more needs no kerf beside it: the sheet's own extra kerf stands for the one that the last item
 * does not need.
 */
final class GuillotineTask {
  final List<Item> items;
  final List<StockKind> stock;
  final int kerf;
  final int trim;
  private final int[] widths;
  private final int[] heights;
  private final boolean[] mayTurn;
  private final int[] sheetWidths;
  private final int[] sheetHeights;

  GuillotineTask(List<Item> items, List<StockKind> stock, Cutting cutting) {
    this.items = List.copyOf(items);
    this.stock = usable(stock, cutting);
    kerf = Sizes.micrometres(cutting.kerf());
    trim = Sizes.micrometres(cutting.trim());
    widths = items.stream().mapToInt(item -> grown(item.width(), 0)).toArray();
    heights = items.stream().mapToInt(item -> grown(item.height(), 0)).toArray();
    sheetWidths = this.stock.stream().mapToInt(kind -> grown(kind.width(), trim)).toArray();
    sheetHeights = this.stock.stream().mapToInt(kind -> grown(kind.height(), trim)).toArray();
    mayTurn = new boolean[items.size()];
    for (int item = 0; item < mayTurn.length; item++) {
      mayTurn[item] = items.get(item).mayTurn() && widths[item] != heights[item];
      requireRoom(item);
    }
  }

  private static List<StockKind> usable(List<StockKind> stock, Cutting cutting) {
    List<StockKind> usable = new ArrayList<>(stock);
    usable.removeIf(
        kind -> kind.limit() == 0 || Math.min(kind.width(), kind.height()) <= 2 * cutting.trim());
    return List.copyOf(usable);
  }

  private int grown(double millimetres, int margin) {
    return Sizes.micrometres(millimetres) - 2 * margin + kerf;
  }

  private void requireRoom(int item) {
    if (IntStream.range(0, stock.size()).noneMatch(kind -> fits(item, kind))) {
      throw new IllegalArgumentException("fits no stock kind: " + items.get(item));
    }
  }

  int size() {
    return widths.length;
  }

  int width(int item, boolean turned) {
    return turned ? heights[item] : widths[item];
  }

  int height(int item, boolean turned) {
    return turned ? widths[item] : heights[item];
  }

  long area(int item) {
    return (long) widths[item] * heights[item];
  }

  long itemArea() {
    return IntStream.range(0, size()).mapToLong(this::area).sum();
  }

  boolean mayTurn(int item) {
    return mayTurn[item];
  }

  int sheetWidth(int kind) {
    return sheetWidths[kind];
  }

  int sheetHeight(int kind) {
    return sheetHeights[kind];
  }

  long sheetArea(int kind) {
    return (long) sheetWidths[kind] * sheetHeights[kind];
  }

  /** The most sheets of a kind that a plan can use: no more than there are items. */
  int most(int kind) {
    return Math.min(stock.get(kind).limit(), size());
  }

  boolean fits(int item, int kind) {
    return fits(item, kind, false) || (mayTurn[item] && fits(item, kind, true));
  }

  boolean fits(int item, int kind, boolean turned) {
    return width(item, turned) <= sheetWidths[kind] && height(item, turned) <= sheetHeights[kind];
  }
}
