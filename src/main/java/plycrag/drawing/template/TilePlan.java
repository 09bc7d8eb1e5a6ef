package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;
import plycrag.geometry.Tolerance;

/**
 * Which parts of a sheet are printed on tiles, so that every hole lies whole on one and tiles
 * without a hole of their own are left out.
 *
 * <p>Tiles stand in bands, as taped rows of paper do. How the holes are shared out among bands is
 * searched exactly, and within a band tiles follow each other from the left as each can reach: the
 * fewest tiles that bands allow. Where it costs no tile, a tile laps over the one before it.
 */
final class TilePlan {
  /** How far neighbours lap over each other (common practice, no source), mm. */
  static final double LAP = 15;

  /** Places that differ by less across the bands go into the same one, mm. */
  private static final double GRAIN = 5;

  private final double width;
  private final double height;
  private final double around;

  /**
   * Plans tiles of one size.
   *
   * @param width of a tile, mm
   * @param height of a tile, mm
   * @param around how much of the sheet around a hole's centre belongs to it, mm
   */
  TilePlan(double width, double height, double around) {
    this.width = width;
    this.height = height;
    this.around = around;
  }

  /**
   * A tile.
   *
   * @param name a letter for the band, a number in it
   * @param window what of the sheet it shows
   * @param holes centres of those that lie whole on it and on none before it
   */
  record Tile(String name, Envelope window, List<Xy> holes) {}

  /** A hole by its place along the band and across it. */
  private record Spot(double along, double across, Xy hole) {}

  /** The tiles of bands that run across the sheet, or up it if that takes fewer. */
  List<Tile> of(List<Xy> holes) {
    List<Tile> level = banded(holes, true);
    List<Tile> upright = banded(holes, false);
    return upright.size() < level.size() ? upright : level;
  }

  private List<Tile> banded(List<Xy> holes, boolean level) {
    List<List<Spot>> lines = lines(holes, level);
    List<Tile> tiles = new ArrayList<>();
    double before = Double.NEGATIVE_INFINITY;
    int[] starts = bestStarts(lines, level);
    for (int band = 0; band + 1 < starts.length; band++) {
      List<Spot> spots = spots(lines, starts[band], starts[band + 1] - 1);
      double deep = level ? height : width;
      double low = start(spots, Spot::across, before, deep);
      before = low + deep;
      addBand(letters(band), spots, low, level, tiles);
    }
    return tiles;
  }

  /** The holes in lines across the bands, sorted. */
  private static List<List<Spot>> lines(List<Xy> holes, boolean level) {
    TreeMap<Double, List<Spot>> lines = new TreeMap<>();
    for (Xy hole : holes) {
      Spot spot = level ? new Spot(hole.x(), hole.y(), hole) : new Spot(hole.y(), hole.x(), hole);
      lines.computeIfAbsent(Math.floor(spot.across() / GRAIN), key -> new ArrayList<>()).add(spot);
    }
    return List.copyOf(lines.values());
  }

  /** The numbers of the lines with which bands begin, and the count of lines at the end. */
  private int[] bestStarts(List<List<Spot>> lines, boolean level) {
    int[] tiles = new int[lines.size() + 1];
    int[] from = new int[lines.size() + 1];
    for (int end = 1; end <= lines.size(); end++) {
      tiles[end] = Integer.MAX_VALUE;
      for (int start = end - 1; start >= 0 && fits(lines, start, end - 1, level); start--) {
        int count = tiles[start] + shared(spots(lines, start, end - 1), level).size();
        if (count < tiles[end]) {
          tiles[end] = count;
          from[end] = start;
        }
      }
    }
    List<Integer> starts = new ArrayList<>(List.of(lines.size()));
    for (int at = lines.size(); at > 0; at = from[at]) {
      starts.add(0, from[at]);
    }
    return starts.stream().mapToInt(Integer::intValue).toArray();
  }

  private boolean fits(List<List<Spot>> lines, int first, int last, boolean level) {
    double low = least(lines.get(first), Spot::across);
    double high = greatest(lines.get(last), Spot::across);
    return first == last || Tolerance.atMost(high - low, (level ? height : width) - 2 * around);
  }

  private static List<Spot> spots(List<List<Spot>> lines, int first, int last) {
    return lines.subList(first, last + 1).stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparingDouble(Spot::along).thenComparingDouble(Spot::across))
        .toList();
  }

  /** A band's holes by tiles, each as far as it can reach. */
  private List<List<Spot>> shared(List<Spot> spots, boolean level) {
    double reach = (level ? width : height) - 2 * around + Tolerance.RECKONING;
    List<List<Spot>> tiles = new ArrayList<>();
    double first = Double.NEGATIVE_INFINITY;
    for (Spot spot : spots) {
      if (tiles.isEmpty() || spot.along() - first > reach) {
        tiles.add(new ArrayList<>());
        first = spot.along();
      }
      tiles.get(tiles.size() - 1).add(spot);
    }
    return tiles;
  }

  private void addBand(
      String letters, List<Spot> spots, double low, boolean level, List<Tile> tiles) {
    double before = Double.NEGATIVE_INFINITY;
    int number = 1;
    for (List<Spot> shared : shared(spots, level)) {
      double left = start(shared, Spot::along, before, level ? width : height);
      before = left + (level ? width : height);
      Envelope window =
          level
              ? new Envelope(left, left + width, low, low + height)
              : new Envelope(low, low + width, left, left + height);
      tiles.add(new Tile(letters + number++, window, shared.stream().map(Spot::hole).toList()));
    }
  }

  /** Where a tile begins: lapping over the one before or at the sheet's edge, if its holes let. */
  private double start(List<Spot> spots, ToDoubleFunction<Spot> place, double before, double size) {
    double latest = least(spots, place) - around;
    double earliest = Math.min(latest, greatest(spots, place) + around - size);
    double wished = before == Double.NEGATIVE_INFINITY ? -LAP / 2 : before - LAP;
    return Tolerance.wholeDown(Math.max(earliest, Math.min(wished, latest)));
  }

  private static double least(List<Spot> spots, ToDoubleFunction<Spot> place) {
    return spots.stream().mapToDouble(place).min().orElseThrow();
  }

  private static double greatest(List<Spot> spots, ToDoubleFunction<Spot> place) {
    return spots.stream().mapToDouble(place).max().orElseThrow();
  }

  /** A, B, … Z, AA, … */
  private static String letters(int band) {
    return IntStream.of(band / 26 - 1, band % 26)
        .filter(letter -> letter >= 0)
        .mapToObj(letter -> String.valueOf((char) ('A' + letter)))
        .reduce("", String::concat);
  }
}
