package plycrag.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import plycrag.solve.cutting.CuttingTask;

/** Reads an instance of the one-dimensional cutting stock problem. */
public final class StockFile {
  private StockFile() {}

  /**
   * The task: sticks of one length and one price, no kerf.
   *
   * @throws IllegalArgumentException if the file does not hold an instance
   */
  public static CuttingTask read(Path file) throws IOException {
    try {
      return parse(Files.readString(file));
    } catch (IOException fault) {
      throw new IOException(file + ": cannot be read", fault);
    } catch (IllegalArgumentException fault) {
      throw new IllegalArgumentException(file + ": " + fault.getMessage(), fault);
    }
  }

  private static CuttingTask parse(String text) {
    List<String> lines = text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    if (lines.size() < 3 || lines.size() != 2 + Long.parseLong(lines.get(0))) {
      throw new IllegalArgumentException("the first line is not the number of lines that follow");
    }
    long stock = Long.parseLong(lines.get(1));
    List<CuttingTask.Piece> pieces = new ArrayList<>();
    for (String line : lines.subList(2, lines.size())) {
      String[] words = line.split("\\s+", -1);
      if (words.length != 2) {
        throw new IllegalArgumentException("not a length and a demand: " + line);
      }
      long length = Long.parseLong(words[0]);
      if (length > stock) {
        throw new IllegalArgumentException(length + " is longer than the stock");
      }
      pieces.add(new CuttingTask.Piece(length, Integer.parseInt(words[1])));
    }
    CuttingTask.Stock sticks = new CuttingTask.Stock(stock, stock, CuttingTask.Stock.UNLIMITED);
    return new CuttingTask(pieces, List.of(sticks), 0, 0);
  }
}
