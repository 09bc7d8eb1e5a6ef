package plycrag.files.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** A file while its pages are added; the same pages make the same bytes. */
final class PdfFile {
  /** Any number does, as long as it is always the same. */
  private static final long ID = 1;

  private final PDDocument file;
  private final PdfFont font;
  private final PDDocumentOutline outline = new PDDocumentOutline();

  PdfFile(PDDocument file, String title) throws IOException {
    this.file = file;
    this.font = PdfFont.in(file);
    describe(title);
  }

  private void describe(String title) {
    file.setDocumentId(ID);
    file.setVersion(1.7f);
    file.getDocumentInformation().setTitle(title);
    file.getDocumentInformation().setProducer("Plycrag");
    PDDocumentCatalog catalog = file.getDocumentCatalog();
    catalog.setLanguage("en");
    catalog.setDocumentOutline(outline);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    catalog.setViewerPreferences(preferences);
  }

  /** The font of all pages. */
  PdfFont font() {
    return font;
  }

  /** Adds a page of a size, mm, painted with those operators. */
  PDPage add(double width, double height, String operators) throws IOException {
    PDPage leaf = new PDPage();
    PageBoxes.set(leaf, width, height);
    leaf.setResources(new PDResources());
    leaf.getResources().put(PdfFont.NAME, font.font());
    PDStream content = new PDStream(file);
    try (OutputStream out = content.createOutputStream()) {
      out.write(operators.getBytes(StandardCharsets.US_ASCII));
    }
    leaf.setContents(content);
    file.addPage(leaf);
    return leaf;
  }

  /** Adds a line to the list of contents that a viewer shows beside the pages. */
  void name(String name, PDPageDestination place) {
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(name);
    item.setDestination(place);
    outline.addLast(item);
  }

  /** The whole file; nothing may be added afterwards. */
  byte[] bytes() throws IOException {
    font.finish();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    file.save(bytes, CompressParameters.NO_COMPRESSION);
    return bytes.toByteArray();
  }
}
