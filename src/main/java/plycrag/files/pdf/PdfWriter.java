package plycrag.files.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import plycrag.document.Print;

/** Writes pages as PDF. */
public final class PdfWriter {
  /** Any number does, as long as it is always the same. */
  private static final long ID = 1;

  private final PDDocument file;
  private final PdfFont font;
  private final PDDocumentOutline outline = new PDDocumentOutline();

  private PdfWriter(PDDocument file) throws IOException {
    this.file = file;
    this.font = PdfFont.in(file);
  }

  /** The bytes of a file. */
  public static byte[] write(Print print) {
    try (PDDocument file = new PDDocument()) {
      return new PdfWriter(file).bytes(print);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private byte[] bytes(Print print) throws IOException {
    describe(print.title());
    for (Print.Page page : print.pages()) {
      add(page);
    }
    font.finish();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    file.save(bytes, CompressParameters.NO_COMPRESSION);
    return bytes.toByteArray();
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

  private void add(Print.Page page) throws IOException {
    PDPage leaf = new PDPage();
    PageBoxes.set(leaf, page.width(), page.height());
    leaf.setResources(new PDResources());
    leaf.getResources().put(PdfFont.NAME, font.font());
    PDStream content = new PDStream(file);
    try (OutputStream out = content.createOutputStream()) {
      out.write(PageContent.of(page, font).getBytes(StandardCharsets.US_ASCII));
    }
    leaf.setContents(content);
    file.addPage(leaf);
    name(page.name(), leaf);
  }

  private void name(String name, PDPage leaf) {
    PDPageFitDestination whole = new PDPageFitDestination();
    whole.setPage(leaf);
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(name);
    item.setDestination(whole);
    outline.addLast(item);
  }
}
