package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.files.OutputFile;
import plycrag.files.lint.DxfLint;
import plycrag.files.ngc.NgcReader;

/** Whatever a valid file says, the wall is delivered, right or stamped, and never a defect. */
class DeliverableTest {

  @Provide
  Arbitrary<String> files() {
    Arbitrary<String> units =
        Arbitraries.of(
            "unit = \"mm\"\nraise = 0\n",
            "unit = \"mm\"\nraise = 17\n",
            "unit = \"mm\"\nraise = 900\n");
    Arbitrary<Integer> sizes = Arbitraries.integers().between(300, 9000);
    Arbitrary<Integer> angles = Arbitraries.integers().between(-15, 60);
    Arbitrary<String> sheets =
        Arbitraries.of(
            "",
            "seam-gap = 0\n",
            "lay = \"up\"\nseam-gap = 10\n",
            "lay = \"across\"\nthickness = 9\nleast-width = 50\n");
    Arbitrary<String> frames =
        Arbitraries.of(
            "",
            "seams = \"shared\"\n",
            "seams = \"flat\"\nsection = \"2x6\"\n",
            "section = [90, 45]\n");
    Arbitrary<String> inserts =
        Arbitraries.of(
            "",
            "when-blocked = \"drop\"\npattern = \"offset\"\n",
            "setback = 1000\n",
            "pitch-across = 55\npitch-up = 333\nsetback = 0\n",
            "pattern = \"lines\"\ncolumns = [10, 290, 5000]\nrows = [1, 299.6]\n");
    Arbitrary<String> outputs = Arbitraries.of("", "[output]\ndxf = \"r12\"\n");
    Arbitrary<String> facets =
        Combinators.combine(sizes, sizes, angles)
            .as(
                (width, length, angle) ->
                    "[[facet]]\nwidth = " + width + "\nlength = " + length + "\nangle = " + angle);
    return Combinators.combine(units, facets, sheets, frames, inserts, outputs)
        .as(
            (unit, facet, sheet, frame, insert, output) ->
                "[wall]\n"
                    + unit
                    + facet
                    + "\n[sheet]\n"
                    + sheet
                    + "[frame]\n"
                    + frame
                    + "[inserts]\n"
                    + insert
                    + output);
  }

  @Property(tries = 40)
  void everyValidFileIsDelivered(@ForAll("files") String file) {
    Design design = Designs.of("wall.toml", file);
    assertThat(design).isInstanceOf(Design.Judged.class);
    if (design instanceof Design.Judged judged) {
      List<OutputFile> files = Deliverable.of(judged);
      assertThat(files).extracting(OutputFile::path).doesNotHaveDuplicates().contains("index.html");
      for (OutputFile made : files) {
        String text = new String(made.content(), StandardCharsets.UTF_8);
        assertThat(withoutBinary(text)).as(made.path()).doesNotContain("NaN", "Infinity");
        if (made.path().endsWith(".dxf")) {
          assertThat(DxfLint.faults(text)).as(made.path()).isEmpty();
        }
        if (made.path().endsWith(".ngc")) {
          assertThat(NgcReader.read(text).holes()).isNotEmpty();
        }
      }
      boolean programs = files.stream().anyMatch(made -> made.path().startsWith("cnc/"));
      assertThat(programs && !judged.checked().isApproved()).isFalse();
    }
  }

  /** A model inside a page is in base64, which has all words of three letters sooner or later. */
  private static String withoutBinary(String text) {
    return text.replaceAll("[A-Za-z0-9+/]{500,}", "");
  }

  /** Book, drawings and lists too, of a machine that turns sheets, changes tools and cuts arcs. */
  @Test
  void aWallForAnotherMachineIsDelivered() {
    String machine =
        """
        [machine]
        program-unit = "in"
        origin = "lower-right"
        z-zero = "sheet-top"
        arcs = true
        tool-change = "word"
        outlines = "skin"
        marks = "engraved"
        [[tool]]
        kind = "engraver"
        diameter = 6
        length = 6
        point-angle = 60
        tip-diameter = 0.2
        [[tool]]
        kind = "end-mill"
        diameter = 6
        length = 22
        speed = 18000
        [nesting]
        face-up = "back"
        """;
    String text = TestFiles.read(Path.of("params/river-bay.toml")) + machine;
    Design.Judged judged = (Design.Judged) Designs.of("river-bay.toml", text);
    Map<String, String> files =
        Deliverable.of(judged).stream()
            .collect(
                Collectors.toMap(
                    OutputFile::path, file -> new String(file.content(), StandardCharsets.UTF_8)));
    assertThat(files)
        .containsKeys("build-book.pdf", "drawings/drawings.pdf", "lists/holes.csv")
        .containsKeys("drawings/sheet-S1-back.dxf", "cnc/sheet-S1-back.html");
    assertThat(files.get("index.html")).contains("engrav");
    assertThat(files.get("cnc/sheet-S1-back-t01.ngc")).contains("G20", "M6");
  }
}
