package plycrag.files.lint;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/** Reads where letters stand and tells which stand outside of their page. */
final class PdfWordPlaces extends PDFTextStripper {
  /** Points; letters' own coordinates are single precision. */
  private static final double ROUNDING = 0.05;

  /** Letters outside, page by page, as they are read. */
  private final List<String> beside = new ArrayList<>();

  private int last;

  private PdfWordPlaces() {}

  /** The letters outside, those of a page together. */
  static List<String> beside(PDDocument file) throws IOException {
    PdfWordPlaces reader = new PdfWordPlaces();
    reader.writeText(file, Writer.nullWriter());
    return reader.beside;
  }

  @Override
  protected void processTextPosition(TextPosition letter) {
    if (!letter.getUnicode().isBlank() && isBeside(letter)) {
      add(letter.getUnicode());
    }
  }

  private void add(String letter) {
    int page = getCurrentPageNo();
    if (page == last) {
      beside.set(beside.size() - 1, beside.get(beside.size() - 1) + letter);
    } else {
      beside.add("page " + page + ", " + letter);
    }
    last = page;
  }

  /** Whether either end of a letter's foot is. */
  private boolean isBeside(TextPosition letter) {
    Matrix place = letter.getTextMatrix();
    double across = place.getScaleX();
    double up = place.getShearY();
    double em = Math.sqrt(across * across + up * up);
    double x = place.getTranslateX();
    double y = place.getTranslateY();
    double width = letter.getWidthDirAdj();
    return isBeside(x, y) || isBeside(x + across / em * width, y + up / em * width);
  }

  private boolean isBeside(double x, double y) {
    PDRectangle paper = getCurrentPage().getMediaBox();
    return x < paper.getLowerLeftX() - ROUNDING
        || y < paper.getLowerLeftY() - ROUNDING
        || x > paper.getUpperRightX() + ROUNDING
        || y > paper.getUpperRightY() + ROUNDING;
  }
}
