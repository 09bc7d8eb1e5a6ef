package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.TestFiles;

/** A part of a folder, the whole of which is made elsewhere. */
class FolderPartTest {
  private static final String WALL =
      "[wall]\nwidth = 1200\n[[facet]]\nlength = 1200\n[inserts]\npitch-across = 250\n";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int build(String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("slipway.toml"), WALL);
    List<String> arguments = new java.util.ArrayList<>(List.of("build", file.toString()));
    arguments.addAll(List.of("--out", folder.resolve("made").toString()));
    arguments.addAll(List.of(more));
    return new Plycrag(new PrintWriter(out, true), new PrintWriter(err, true))
        .run(arguments.toArray(String[]::new));
  }

  @ParameterizedTest
  @CsvSource({
    "drawings, drawings/plan.svg, true", "S2, drawings/sheet-S2-front.dxf, true",
    "S2, cnc/sheet-S2-front-t01.ngc, true", "S2, cnc/sheet-S21-front.html, false",
    "S2, templates/sheet-S2-front.pdf, true", "index, index.html, true",
    "lists/holes, lists/holes.csv, true", "lists, listsmore.csv, false",
    "model.glb, model.glb, true", "drawings, cnc/sheet-S1-front.html, false",
  })
  void aNameIsOfAFolderAFileOrASheet(String name, String path, boolean takes) {
    assertThat(new FolderPart(List.of(name)).takes(path)).isEqualTo(takes);
    assertThat(FolderPart.whole().takes(path)).isTrue();
  }

  @Test
  void aPartHasAFolderOfItsOwnThatSaysSo() throws IOException {
    assertThat(build()).isZero();
    Path whole = folder.resolve("made/slipway");
    byte[] before = TestFiles.content(whole.resolve("manifest.json"));
    assertThat(build("--only", "S1,lists", "--quiet")).isZero();
    Path part = folder.resolve("made/slipway-part");
    assertThat(part.resolve("index.html")).doesNotExist();
    for (Path file : TestFiles.list(part, "")) {
      Path same = whole.resolve(part.relativize(file).toString());
      if (!file.endsWith("manifest.json") && !file.endsWith(FolderPart.NOTE)) {
        assertThat(file).hasSameBinaryContentAs(same);
      }
    }
    assertThat(TestFiles.list(part, ".dxf")).hasSize(2);
    assertThat(part.resolve("lists/holes.csv")).exists();
    assertThat(TestFiles.read(part.resolve(FolderPart.NOTE))).contains("a part only: S1, lists.");
    assertThat(TestFiles.content(whole.resolve("manifest.json"))).isEqualTo(before);
    assertThat(build("--only", "model.glb")).isZero();
    assertThat(TestFiles.list(part, "")).hasSize(3);
  }

  @Test
  void aWholeFolderOfThatNameIsLeft() throws IOException {
    assertThat(build()).isZero();
    Files.move(folder.resolve("made/slipway"), folder.resolve("made/slipway-part"));
    assertThat(build("--only", "lists")).isEqualTo(3);
    assertThat(err.toString()).contains("slipway-part holds a whole wall; it is left as it is");
    assertThat(folder.resolve("made/slipway-part/index.html")).exists();
  }

  @Test
  void aNameThatNothingHasIsToldAndNothingIsWritten() throws IOException {
    assertThat(build("--only", "lists,S7")).isEqualTo(3);
    assertThat(err.toString()).contains("nothing of slipway is called S7");
    assertThat(folder.resolve("made")).doesNotExist();
  }
}
