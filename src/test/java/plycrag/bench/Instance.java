package plycrag.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import plycrag.solve.guillotine.Item;
import plycrag.solve.guillotine.StockKind;

/**
 * A published instance of packing rectangles on equal sheets.
 *
 * @param sheet any number of them, each at the price 1
 */
public record Instance(List<Item> items, StockKind sheet) {

  /**
   * Reads {@code n / W H / n lines "w h"}.
   *
   * @param file named in messages
   * @param rotate whether items may turn
   * @throws IllegalArgumentException if the text is not of this form
   */
  public static Instance read(Path file, List<String> lines, boolean rotate) {
    List<String> filled = lines.stream().map(String::strip).filter(l -> !l.isEmpty()).toList();
    try {
      int count = Integer.parseInt(filled.get(0));
      if (filled.size() != count + 2) {
        throw new IllegalArgumentException("not " + count + " pieces");
      }
      double[] sheet = pair(filled.get(1));
      List<Item> items = new ArrayList<>();
      for (String line : filled.subList(2, filled.size())) {
        double[] size = pair(line);
        items.add(new Item(Integer.toString(items.size() + 1), size[0], size[1], rotate));
      }
      return new Instance(
          List.copyOf(items), new StockKind("sheet", sheet[0], sheet[1], 1, StockKind.UNLIMITED));
    } catch (IllegalArgumentException | IndexOutOfBoundsException problem) {
      throw new IllegalArgumentException(file + ": " + problem.getMessage(), problem);
    }
  }

  private static double[] pair(String line) {
    String[] words = line.split("\\s+", -1);
    if (words.length != 2) {
      throw new IllegalArgumentException("not two numbers: " + line);
    }
    return new double[] {Double.parseDouble(words[0]), Double.parseDouble(words[1])};
  }
}
