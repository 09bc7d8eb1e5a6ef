package plycrag;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Reads the words of a PDF with PDFBox: what they say, and where they stand. */
public final class PdfWords extends PDFTextStripper {
  private static final double MM = 25.4 / 72;

  /** Height of capitals of Liberation Sans, ems: 1409 of 2048 units. */
  private static final double CAPITALS = 1409.0 / 2048;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /**
   * A word.
   *
   * @param page from 1
   * @param text what it says
   * @param place the quadrangle of its capitals, mm from the page's lower left corner
   */
  public record Word(int page, String text, Polygon place) {}

  private final List<Word> words = new ArrayList<>();

  private PdfWords() {
    setSuppressDuplicateOverlappingText(false);
  }

  /** All words in the order in which they are painted. */
  public static List<Word> of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PdfWords reader = new PdfWords();
      reader.writeText(document, new StringWriter());
      return reader.words;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** All text of a page without its white space. */
  public static String text(List<Word> words, int page) {
    StringBuilder text = new StringBuilder();
    words.stream().filter(word -> word.page() == page).forEach(word -> text.append(word.text()));
    return text.toString().replaceAll("\\s", "");
  }

  @Override
  protected void writeString(String text, List<TextPosition> letters) {
    TextPosition last = letters.get(letters.size() - 1);
    Matrix start = letters.get(0).getTextMatrix();
    Matrix end = last.getTextMatrix();
    double em = Math.hypot(end.getScaleX(), end.getShearY());
    double right = end.getScaleX() / em;
    double up = end.getShearY() / em;
    double width = last.getWidthDirAdj();
    Coordinate from = at(start.getTranslateX(), start.getTranslateY());
    Coordinate to = at(end.getTranslateX() + right * width, end.getTranslateY() + up * width);
    double height = em * CAPITALS * MM;
    Coordinate high = new Coordinate(from.x - up * height, from.y + right * height);
    Coordinate far = new Coordinate(to.x - up * height, to.y + right * height);
    Polygon place = GEOMETRY.createPolygon(new Coordinate[] {from, to, far, high, from});
    words.add(new Word(getCurrentPageNo(), text, place));
  }

  private static Coordinate at(double x, double y) {
    return new Coordinate(x * MM, y * MM);
  }
}
