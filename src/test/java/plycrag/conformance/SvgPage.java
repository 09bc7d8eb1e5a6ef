package plycrag.conformance;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;

/** What librsvg makes of an SVG file. */
public final class SvgPage {
  /** Pixels to the millimetre at 254 per inch. */
  public static final int PIXELS_PER_MM = 10;

  private static final Pattern SIZE = Pattern.compile("Page size: +(\\S+) x (\\S+) pts");
  private static final double MM_PER_POINT = 25.4 / 72;

  private SvgPage() {}

  /** A page's size, mm. */
  public record Size(double width, double height) {}

  /** The size of the page that the file is printed on. */
  public static Size size(Path svg) {
    Path pdf = beside(svg, ".test.pdf");
    Tools.output("rsvg-convert", "-f", "pdf", "-o", pdf.toString(), svg.toString());
    Matcher size = SIZE.matcher(Tools.output("pdfinfo", pdf.toString()));
    if (!size.find()) {
      throw new AssertionError("pdfinfo tells no size of " + svg);
    }
    return new Size(mm(size.group(1)), mm(size.group(2)));
  }

  /** The page as pixels. */
  public static BufferedImage image(Path svg) {
    Path png = beside(svg, ".test.png");
    String dpi = Double.toString(PIXELS_PER_MM * 25.4);
    Tools.output("rsvg-convert", "-d", dpi, "-p", dpi, "-o", png.toString(), svg.toString());
    try {
      return ImageIO.read(png.toFile());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Path beside(Path svg, String ending) {
    return Path.of(svg.toAbsolutePath() + ending);
  }

  private static double mm(String points) {
    return Double.parseDouble(points) * MM_PER_POINT;
  }
}
