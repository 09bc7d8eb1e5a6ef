package plycrag.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static plycrag.files.FolderFixture.ORIGIN;
import static plycrag.files.FolderFixture.content;
import static plycrag.files.FolderFixture.contentOf;
import static plycrag.files.FolderFixture.names;
import static plycrag.files.FolderFixture.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.files.json.Manifest;
import plycrag.files.json.ManifestReader;

class OutputFolderTest {
  @TempDir private Path parent;
  private Path target;

  @BeforeEach
  void name() {
    target = parent.resolve("out").resolve("boathouse");
  }

  @Test
  void aFirstRunMakesTheFolder() throws Exception {
    replace("first");

    assertThat(content(target)).isEqualTo(contentOf("first"));
    assertThat(names(target.getParent())).containsExactly("boathouse");
  }

  @Test
  void theManifestListsEveryFileButItself() throws Exception {
    replace("first");

    Manifest manifest =
        ManifestReader.read(Files.readAllBytes(target.resolve("manifest.json"))).orElseThrow();

    assertThat(manifest.origin()).isEqualTo(ORIGIN);
    assertThat(manifest.files())
        .extracting(Manifest.Entry::path)
        .containsExactly("index.html", "lists/holes.csv", "only-first.txt");
    assertThat(manifest.files().get(0).size()).isEqualTo("page of first".length());
  }

  @Test
  void aSecondRunLeavesNothingOfTheFirst() throws Exception {
    replace("first");
    replace("second");

    assertThat(content(target)).isEqualTo(contentOf("second"));
    assertThat(names(target.getParent())).containsExactly("boathouse");
  }

  @Test
  void anEmptyFolderIsTaken() throws Exception {
    Files.createDirectories(target.resolve("empty"));

    replace("first");

    assertThat(content(target)).isEqualTo(contentOf("first"));
  }

  @Test
  void aMissingFileDoesNoHarm() throws Exception {
    replace("first");
    Files.delete(target.resolve("index.html"));

    replace("second");

    assertThat(content(target)).isEqualTo(contentOf("second"));
  }

  @Test
  void anAddedFileIsKept() throws Exception {
    replace("first");
    Files.writeString(target.resolve("lists/notes.txt"), "mine");

    refuses("lists/notes.txt (added); move them away or choose another output folder");
    assertThat(content(target)).containsEntry("lists/notes.txt", "mine");
  }

  @Test
  void aChangedFileIsKept() throws Exception {
    replace("first");
    Files.writeString(target.resolve("index.html"), "page of FIRST");

    refuses("index.html (changed)");
    assertThat(content(target)).containsEntry("index.html", "page of FIRST");
  }

  @Test
  void atMostFiveFilesAreNamed() throws Exception {
    replace("first");
    for (int i = 1; i <= 7; i++) {
      Files.writeString(target.resolve("note" + i), "mine");
    }

    refuses("note1 (added), note2 (added), note3 (added), note4 (added), note5 (added) and 2 more");
  }

  @Test
  void aFolderWithoutAManifestIsKept() throws Exception {
    Files.createDirectories(target);
    Files.writeString(target.resolve("diary.txt"), "mine");

    refuses("has no manifest that says what may be replaced, and holds diary.txt");
  }

  @Test
  void aBrokenManifestCountsAsNone() throws Exception {
    replace("first");
    Files.writeString(target.resolve("manifest.json"), "{");

    refuses("holds index.html, lists/holes.csv, manifest.json, only-first.txt;");
  }

  @Test
  void aFileInThePlaceOfTheFolderIsKept() throws Exception {
    Files.createDirectories(target.getParent());
    Files.writeString(target, "mine");

    refuses("is not a folder");
    assertThat(target).hasContent("mine");
  }

  @Test
  void aLinkInThePlaceOfTheFolderIsKept() throws Exception {
    Path elsewhere = Files.createDirectories(parent.resolve("elsewhere"));
    Files.createDirectories(target.getParent());
    Files.createSymbolicLink(target, elsewhere);

    refuses("is not a folder");
    assertThat(target).isSymbolicLink();
  }

  @Test
  void linksAreNotTheProgramsOwn() throws Exception {
    replace("first");
    Path twin = Files.copy(target.resolve("index.html"), parent.resolve("twin"));
    Files.delete(target.resolve("index.html"));
    Files.createSymbolicLink(target.resolve("index.html"), twin);
    Files.createSymbolicLink(target.resolve("folder"), parent);

    refuses("folder (added), index.html (changed)");
  }

  @Test
  void aLinkIsNoManifest() throws Exception {
    replace("first");
    Path moved = Files.move(target.resolve("manifest.json"), parent.resolve("moved"));
    Files.createSymbolicLink(target.resolve("manifest.json"), moved);

    refuses("has no manifest");
  }

  @Test
  void aFailureNamesThePathAndTheReason() throws Exception {
    Files.writeString(parent.resolve("out"), "in the way");

    assertThatThrownBy(() -> replace("first"))
        .isInstanceOf(OutputFolderException.class)
        .hasMessageStartingWith(parent.resolve("out").toString())
        .hasMessageContaining(" could not be read or written: ")
        .hasCauseInstanceOf(IOException.class);
  }

  @Test
  void twoFilesCannotHaveOnePath() {
    refusesPaths("a/x.svg", "A/X.svg");
    refusesPaths("index.html", "manifest.json");
  }

  private void refusesPaths(String one, String other) {
    List<OutputFile> files = List.of(OutputFile.text(one, ""), OutputFile.text(other, ""));
    assertThatThrownBy(() -> new OutputFolder(target).replace(ORIGIN, files))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private void replace(String name) throws OutputFolderException {
    new OutputFolder(target).replace(ORIGIN, run(name));
  }

  private void refuses(String message) {
    assertThatThrownBy(() -> replace("next"))
        .isInstanceOf(OutputFolderException.class)
        .hasMessageStartingWith(target.toString())
        .hasMessageContaining(message);
  }
}
