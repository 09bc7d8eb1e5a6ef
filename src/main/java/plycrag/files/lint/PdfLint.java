package plycrag.files.lint;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Finds what printers render otherwise or not at all, and what would differ from machine to
 * machine: fonts that are not in the file, boxes that are no paper, words beside the page,
 * compressed streams, dates, an id that was drawn by lot.
 */
public final class PdfLint {
  private static final List<COSName> FONT_FILES =
      List.of(
          COSName.getPDFName("FontFile"),
          COSName.getPDFName("FontFile2"),
          COSName.getPDFName("FontFile3"));

  private static final List<COSName> DATES = List.of(COSName.CREATION_DATE, COSName.MOD_DATE);

  private final List<String> faults = new ArrayList<>();
  private final PDDocument file;
  private final COSDocument objects;

  private PdfLint(PDDocument file) {
    this.file = file;
    this.objects = file.getDocument();
  }

  /** All faults of a file, each a sentence; none if it is sound. */
  public static List<String> faults(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    if (!text.stripTrailing().endsWith("%%EOF")) {
      return List.of("no end");
    }
    try (PDDocument file = Loader.loadPDF(bytes)) {
      PdfLint lint = new PdfLint(file);
      lint.look();
      return List.copyOf(lint.faults);
    } catch (IOException broken) {
      return List.of("not PDF: " + broken.getMessage());
    }
  }

  private void look() throws IOException {
    trailer();
    scaling();
    for (COSObjectKey key : objects.getXrefTable().keySet()) {
      if (objects.getObjectFromPool(key).getObject() instanceof COSDictionary dictionary) {
        look(key, dictionary);
      }
    }
    int number = 1;
    for (PDPage page : file.getPages()) {
      boxes(number++, page);
    }
    PdfWordPlaces.beside(file).forEach(word -> faults.add("words beside the page: " + word));
  }

  private void look(COSObjectKey key, COSDictionary dictionary) {
    if (dictionary instanceof COSStream stream) {
      check(!stream.containsKey(COSName.FILTER), "compressed stream: object " + key.getNumber());
    }
    boolean paints =
        COSName.FONT.equals(dictionary.getCOSName(COSName.TYPE))
            && !COSName.TYPE0.equals(dictionary.getCOSName(COSName.SUBTYPE));
    if (paints) {
      COSDictionary descriptor = dictionary.getCOSDictionary(COSName.FONT_DESC);
      boolean inFile = descriptor != null && FONT_FILES.stream().anyMatch(descriptor::containsKey);
      check(inFile, "font not embedded: " + dictionary.getNameAsString(COSName.BASE_FONT));
    }
  }

  /** A file that is written anew gets the same first and second id. */
  private void trailer() {
    COSArray id = objects.getDocumentID();
    check(id != null && id.size() == 2 && id.get(0).equals(id.get(1)), "no fixed id");
    COSDictionary information = file.getDocumentInformation().getCOSObject();
    check(DATES.stream().noneMatch(information::containsKey), "dated");
  }

  private void scaling() {
    String scaling =
        Optional.ofNullable(file.getDocumentCatalog().getViewerPreferences())
            .map(PDViewerPreferences::getPrintScaling)
            .orElse("");
    check(scaling.equals("None"), "scaled when printed");
  }

  private void boxes(int number, PDPage page) {
    PDRectangle media = page.getMediaBox();
    check(
        PrinterPaper.isSold(media),
        "no paper: page " + number + " of " + PrinterPaper.words(media));
    check(same(media, page.getCropBox()), "boxes differ: crop box of page " + number);
    check(same(media, page.getTrimBox()), "boxes differ: trim box of page " + number);
  }

  private static boolean same(PDRectangle one, PDRectangle other) {
    return one.toString().equals(other.toString());
  }

  private void check(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }
}
