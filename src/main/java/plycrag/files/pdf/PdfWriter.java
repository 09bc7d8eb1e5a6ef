package plycrag.files.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import plycrag.document.Print;

/** Writes pages as PDF. */
public final class PdfWriter {
  private PdfWriter() {}

  /** The bytes of a file. */
  public static byte[] write(Print print) {
    try (PDDocument document = new PDDocument()) {
      PdfFile file = new PdfFile(document, print.title());
      for (Print.Page page : print.pages()) {
        add(page, file);
      }
      return file.bytes();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static void add(Print.Page page, PdfFile file) throws IOException {
    String operators = PageContent.of(page, file.font());
    PDPageFitDestination whole = new PDPageFitDestination();
    whole.setPage(file.add(page.width(), page.height(), operators));
    file.name(page.name(), whole);
  }
}
