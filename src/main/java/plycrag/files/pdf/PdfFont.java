package plycrag.files.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.PrimitiveIterator;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one font, of which a file holds the letters that it uses. Liberation Sans comes with PDFBox.
 *
 * @param font in the file
 * @param letters which letters it has
 * @param widths of letters that have been measured, thousandths of an em
 */
record PdfFont(PDType0Font font, CmapLookup letters, Map<Integer, Float> widths) {
  /** What pages call it. */
  static final COSName NAME = COSName.getPDFName("F1");

  private static final String RESOURCE =
      "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static final double UNITS = 1000;

  /** The font for a file. */
  static PdfFont in(PDDocument file) throws IOException {
    try (InputStream resource = PDDocument.class.getResourceAsStream(RESOURCE)) {
      TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(resource));
      return new PdfFont(
          PDType0Font.load(file, letters, true), letters.getUnicodeCmapLookup(), new HashMap<>());
    }
  }

  /** A line of text as a hexadecimal string; its letters become part of the file. */
  String encoded(String text) {
    try {
      String known = known(text);
      known.codePoints().forEach(font::addToSubset);
      return "<" + HexFormat.of().formatHex(font.encode(known)) + ">";
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** The width of a line of text, in ems. */
  double width(String text) {
    float width = 0; // added up in single precision, as PDFBox does
    for (PrimitiveIterator.OfInt all = text.codePoints().iterator(); all.hasNext(); ) {
      width += widths.computeIfAbsent(all.nextInt(), this::measured);
    }
    return width / UNITS;
  }

  private float measured(int letter) {
    try {
      return font.getStringWidth(known(Character.toString(letter)));
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Puts the letters used into the file, uncompressed; nothing may be written afterwards. */
  void finish() throws IOException {
    font.subset();
    RawStreams.in(font.getCOSObject());
  }

  private String known(String text) {
    StringBuilder known = new StringBuilder();
    for (PrimitiveIterator.OfInt all = text.codePoints().iterator(); all.hasNext(); ) {
      int letter = all.nextInt();
      known.appendCodePoint(letters.getGlyphId(letter) > 0 ? letter : '?');
    }
    return known.toString();
  }
}
