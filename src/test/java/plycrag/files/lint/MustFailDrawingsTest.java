package plycrag.files.lint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.TestFiles;
import plycrag.document.Print;
import plycrag.document.Xy;
import plycrag.files.Specimens;
import plycrag.files.dxf.DxfVersion;
import plycrag.files.dxf.DxfWriter;
import plycrag.files.pdf.PdfWriter;
import plycrag.files.svg.SvgWriter;

/** Broken drawings, each with the fault that it must earn in its first remark. */
class MustFailDrawingsTest {
  private static final Path FOLDER = Path.of("src/test/resources/must-fail");

  static List<Path> dxf() {
    return TestFiles.list(FOLDER.resolve("dxf"), ".dxf");
  }

  static List<Path> svg() {
    return TestFiles.list(FOLDER.resolve("svg"), ".svg");
  }

  @ParameterizedTest
  @MethodSource
  void dxf(Path file) {
    String text = TestFiles.read(file);
    String fault = text.split("\n", -1)[1];
    assertThat(DxfLint.faults(text)).anyMatch(found -> found.contains(fault));
  }

  @ParameterizedTest
  @MethodSource
  void svg(Path file) {
    String text = TestFiles.read(file);
    String fault = text.split("\n", -1)[1].replace("<!-- ", "").replace(" -->", "");
    assertThat(SvgLint.faults(text)).anyMatch(found -> found.contains(fault));
  }

  static List<Path> pdf() {
    return TestFiles.list(FOLDER.resolve("pdf"), ".pdf");
  }

  @ParameterizedTest
  @MethodSource
  void pdf(Path file) throws IOException {
    String text = TestFiles.read(file);
    String fault = text.split("\n", -1)[1].replace("% ", "");
    assertThat(PdfLint.faults(Files.readAllBytes(file)))
        .anyMatch(found -> found.contains(fault))
        .allMatch(found -> found.contains(fault) || text.contains("/Helvetica"));
  }

  @Test
  void soundDrawingsHaveNoFault() {
    assertThat(DxfLint.faults(DxfWriter.write(Specimens.sheet(), DxfVersion.R12))).isEmpty();
    assertThat(DxfLint.faults(DxfWriter.write(Specimens.sheet(), DxfVersion.R2000))).isEmpty();
    assertThat(SvgLint.faults(SvgWriter.write(Specimens.sheet()))).isEmpty();
    Print.Placed placed = new Print.Placed(Specimens.sheet(), new Xy(20, 30));
    Print.Page page = new Print.Page("S1", 210, 297, List.of(placed));
    assertThat(PdfLint.faults(PdfWriter.write(new Print("Boathouse", List.of(page))))).isEmpty();
  }
}
