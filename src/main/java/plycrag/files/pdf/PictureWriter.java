package plycrag.files.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import plycrag.document.Drawing;
import plycrag.document.Print;
import plycrag.document.Xy;

/**
 * Writes a drawing as a picture of dots, as its page would be printed. Its bytes are not the same
 * on every Java, so no folder holds one.
 */
public final class PictureWriter {
  /** Fine enough for the smallest letters on a screen (a choice). */
  private static final int DOTS_PER_INCH = 150;

  private PictureWriter() {}

  /** The bytes of a PNG file. */
  public static byte[] png(Drawing drawing) {
    double width = drawing.extent().width() / drawing.scale();
    double height = drawing.extent().height() / drawing.scale();
    Print.Placed placed = new Print.Placed(drawing, new Xy(0, 0));
    Print.Page page = new Print.Page("picture", width, height, List.of(placed));
    byte[] print = PdfWriter.write(new Print(drawing.title(), List.of(page)));
    try (PDDocument document = Loader.loadPDF(print)) {
      BufferedImage image =
          new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.RGB);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, "png", out);
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
