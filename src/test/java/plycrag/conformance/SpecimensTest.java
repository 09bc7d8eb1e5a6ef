package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import plycrag.document.Drawing;
import plycrag.document.DrillProgram;
import plycrag.document.Extent;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.files.Specimens;
import plycrag.files.dxf.DxfVersion;
import plycrag.files.dxf.DxfWriter;
import plycrag.files.lint.DxfTags;
import plycrag.files.ngc.NgcReader;
import plycrag.files.ngc.NgcWriter;
import plycrag.files.svg.SvgWriter;

/** Programs from outside read the specimens; each helper is also shown something it must refuse. */
@Tag("conformance")
class SpecimensTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void ezdxfFindsNothingToMend(DxfVersion version) {
    Path file = dxf(DxfWriter.write(Specimens.sheet(), version));
    assertThat(EzdxfAudit.complaints(file)).isEmpty();
    assertThat(EzdxfAudit.circles(file))
        .containsExactly(
            new DxfTags.Circle("BORE_12_0_THROUGH", 200, 300.25, 6),
            new DxfTags.Circle("BORE_12_0_THROUGH", 1000.5, 300.25, 6));
  }

  /** The auditor mends this without an exit code; the helper must not take that for sound. */
  @Test
  void whatEzdxfMendsIsAComplaint() {
    String sound = DxfWriter.write(Specimens.sheet(), DxfVersion.R2000);
    String broken = sound.replaceFirst("\nCIRCLE\n", "\nCIRCLE\n6\nNO_SUCH\n");
    assertThat(EzdxfAudit.complaints(dxf(sound))).isEmpty();
    assertThat(EzdxfAudit.complaints(dxf(broken))).contains("undefined linetype");
  }

  @Test
  void theInterpreterDrillsTheSameHoles() {
    Path file = ngc(NgcWriter.write(Specimens.twoHoles(), Specimens.PLAIN));
    assertThat(Rs274.holes(file))
        .containsExactly(
            new NgcReader.Hole(200, 300.25, -18.5), new NgcReader.Hole(1000.5, 300.25, -18.5));
  }

  @Test
  void theInterpreterKnowsTheCommentsAsComments() {
    List<String> remarks =
        List.of("probeopen log.txt", "(a) ; b % Ø #1=2", "MSG, hello", "logclose");
    Path file =
        ngc(
            NgcWriter.write(
                new DrillProgram("S1", "front", 1, remarks, List.of(), List.of()),
                Specimens.PLAIN));
    assertThat(Rs274.interpret(file).output())
        .contains("COMMENT(\"- PROBEOPEN LOG.TXT\")", "COMMENT(\"A B 1 2\")")
        .contains("COMMENT(\"MSG HELLO\")", "COMMENT(\"- LOGCLOSE\")");
  }

  @Test
  void theInterpreterRefusesAProgramWithoutEnd() {
    String endless = NgcWriter.write(Specimens.twoHoles(), Specimens.PLAIN).replace("M2\n", "");
    Path file = ngc(endless);
    assertThatThrownBy(() -> Rs274.holes(file)).isInstanceOf(AssertionError.class);
  }

  @Test
  void thePageIsAsLargeAsStated() {
    SvgPage.Size size = SvgPage.size(svg(Specimens.sheet()));
    assertThat(size.width()).isCloseTo(130, offset(0.05));
    assertThat(size.height()).isCloseTo(70, offset(0.05));
  }

  /** An H of 20 mm whose place is the middle of a page of 60 mm: its ink is measured. */
  @ParameterizedTest
  @CsvSource({"0", "90", "180", "270"})
  void capitalsAreAsTallAsAskedAndStandInTheMiddle(double turn) {
    Shape letter =
        new Shape.Label(Specimens.NOTES, new Xy(30, 30), "H", 20, TextAnchor.MIDDLE, turn);
    BufferedImage page =
        SvgPage.image(svg(new Drawing("H", 1, new Extent(0, 0, 60, 60), List.of(letter))));
    boolean upright = turn % 180 == 0;
    int[] rows = inked(page, upright);
    assertThat(length(rows)).isCloseTo(20, offset(0.2));
    assertThat(middle(rows)).isCloseTo(30, offset(0.2));
    assertThat(middle(inked(page, !upright))).isCloseTo(30, offset(0.3));
  }

  /** The rows, or columns, that have ink. */
  private static int[] inked(BufferedImage page, boolean rows) {
    return IntStream.range(0, rows ? page.getHeight() : page.getWidth())
        .filter(
            i ->
                IntStream.range(0, rows ? page.getWidth() : page.getHeight())
                    .map(j -> rows ? page.getRGB(j, i) : page.getRGB(i, j))
                    .anyMatch(pixel -> (pixel & 0xFF) < 0x80))
        .toArray();
  }

  private static double length(int[] lines) {
    return (lines[lines.length - 1] - lines[0] + 1.0) / SvgPage.PIXELS_PER_MM;
  }

  private static double middle(int[] lines) {
    return (lines[lines.length - 1] + lines[0] + 1.0) / 2 / SvgPage.PIXELS_PER_MM;
  }

  private Path dxf(String text) {
    return Tools.write(folder.resolve("test.dxf"), text);
  }

  private Path ngc(String text) {
    return Tools.write(folder.resolve("test.ngc"), text);
  }

  private Path svg(Drawing drawing) {
    return Tools.write(folder.resolve("test.svg"), SvgWriter.write(drawing));
  }
}
