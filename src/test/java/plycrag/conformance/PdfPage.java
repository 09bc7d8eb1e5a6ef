package plycrag.conformance;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import javax.imageio.ImageIO;

/**
 * A page as poppler paints it, measured by its ink.
 *
 * @param image black and white
 */
public record PdfPage(BufferedImage image) {
  private static final double MM = 600 / 25.4;

  /** A blot of ink: the middle and the size of the box around it, mm. */
  public record Blot(double x, double y, double width, double height) {}

  /** Paints a page at 600 pixels to the inch. */
  public static PdfPage of(Path pdf, int number) {
    try {
      Path folder = Files.createTempDirectory("plycrag-page");
      Path stem = folder.resolve("page");
      String page = Integer.toString(number);
      Tools.output(
          "pdftoppm",
          "-r",
          "600",
          "-gray",
          "-png",
          "-singlefile",
          "-f",
          page,
          "-l",
          page,
          pdf.toAbsolutePath().toString(),
          stem.toString());
      BufferedImage image = ImageIO.read(folder.resolve("page.png").toFile());
      Files.delete(folder.resolve("page.png"));
      Files.delete(folder);
      return new PdfPage(image);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private boolean dark(int x, int y) {
    return x >= 0
        && y >= 0
        && x < image.getWidth()
        && y < image.getHeight()
        && image.getRaster().getSample(x, y, 0) < 0x80;
  }

  /** The lengths of level strokes that are longer than a length, mm. */
  public List<Double> strokes(double least) {
    List<Double> found = new ArrayList<>();
    for (int y = 0; y < image.getHeight(); y++) {
      int start = 0;
      for (int x = 0; x <= image.getWidth(); x++) {
        if (!dark(x, y)) {
          if ((x - start) / MM > least) {
            found.add((x - start) / MM);
          }
          start = x + 1;
        }
      }
    }
    return found;
  }

  /** All blots. */
  public List<Blot> blots() {
    List<Blot> blots = new ArrayList<>();
    BitSet seen = new BitSet();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (dark(x, y) && !seen.get(y * image.getWidth() + x)) {
          blots.add(blot(x, y, seen));
        }
      }
    }
    return blots;
  }

  private Blot blot(int startX, int startY, BitSet seen) {
    int left = startX;
    int right = startX;
    int top = startY;
    int low = startY;
    Deque<int[]> open = new ArrayDeque<>(List.of(new int[] {startX, startY}));
    while (!open.isEmpty()) {
      int[] at = open.pop();
      int number = at[1] * image.getWidth() + at[0];
      if (dark(at[0], at[1]) && !seen.get(number)) {
        seen.set(number);
        left = Math.min(left, at[0]);
        right = Math.max(right, at[0]);
        top = Math.min(top, at[1]);
        low = Math.max(low, at[1]);
        open.push(new int[] {at[0] + 1, at[1]});
        open.push(new int[] {at[0] - 1, at[1]});
        open.push(new int[] {at[0], at[1] + 1});
        open.push(new int[] {at[0], at[1] - 1});
      }
    }
    return new Blot(
        (left + right + 1) / 2.0 / MM,
        (top + low + 1) / 2.0 / MM,
        (right - left + 1) / MM,
        (low - top + 1) / MM);
  }
}
