package plycrag.files.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Print;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.files.Specimens;

class PdfWriterTest {
  private static final byte[] SHEET = PdfWriter.write(print(Specimens.sheet()));

  private static Print print(Drawing drawing) {
    Print.Placed placed = new Print.Placed(drawing, new Xy(20, 30));
    return new Print("Boathouse", List.of(new Print.Page("S1", 210, 297, List.of(placed))));
  }

  private static String text(byte[] file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      return new PDFTextStripper().getText(document);
    }
  }

  /** ISO 216: A4 is 210 mm x 297 mm; a point is 1/72 in: 595.2756 x 841.8898. */
  @Test
  void allBoxesAreThePaper() {
    assertThat(LittlePdf.of(SHEET).boxes())
        .containsExactlyInAnyOrder(
            new LittlePdf.Box("Media", 595.2756, 841.8898),
            new LittlePdf.Box("Crop", 595.2756, 841.8898),
            new LittlePdf.Box("Trim", 595.2756, 841.8898));
  }

  @Test
  void theSameMakesTheSameBytesWithoutDateOrCompression() {
    assertThat(PdfWriter.write(print(Specimens.sheet()))).isEqualTo(SHEET);
    assertThat(LittlePdf.of(SHEET).text()).doesNotContain("/Filter", "CreationDate", "ModDate");
  }

  /** ISO 32000-1 table 150, from memory. */
  @Test
  void asksNotToBeScaled() {
    assertThat(LittlePdf.of(SHEET).text()).contains("/PrintScaling /None");
  }

  @Test
  void theTextCanBeRead() throws IOException {
    assertThat(text(SHEET).replaceAll("\\s", "")).contains("Ø12&<5>", "up\\^J");
    assertThat(LittlePdf.of(SHEET).text()).contains("+LiberationSans", "/FontFile2");
  }

  /** Only the letters used: the whole font takes 410 712 bytes. */
  @Test
  void theFontIsASubset() {
    assertThat(SHEET.length).isLessThan(60_000);
  }

  @Test
  void aLetterThatTheFontHasNotIsAQuestionMark() throws IOException {
    Shape label =
        new Shape.Label(Specimens.NOTES, new Xy(0, 0), "舟 dock", 3.5, TextAnchor.MIDDLE, 0);
    Drawing drawing = new Drawing("dock", 1, new Extent(-50, -9, 50, 9), List.of(label));
    assertThat(text(PdfWriter.write(print(drawing)))).contains("? dock");
  }

  /** At 1:10 the hole at 200 lies (200 + 50) / 10 + 20 mm from the page's left. */
  @Test
  void circlesStandWhereTheyShould() {
    List<LittlePdf.Circle> circles = LittlePdf.circles(LittlePdf.of(SHEET).contents().get(0));
    assertThat(circles).hasSize(2);
    assertThat(circles.get(0).x()).isCloseTo(45, within(0.001));
    assertThat(circles.get(0).y()).isCloseTo(65.025, within(0.001));
    assertThat(circles.get(0).radius()).isCloseTo(0.6, within(0.001));
    assertThat(circles.get(1).x()).isCloseTo(125.05, within(0.001));
  }
}
