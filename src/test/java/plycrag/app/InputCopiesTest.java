package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.TestFiles;
import plycrag.files.OutputFile;

/** A folder keeps what it was made from, and can be made again from that alone. */
class InputCopiesTest {
  private static final String PRICES =
      "article,size,unit,contents,price,currency,tax,mass\ninsert,12 mm,pack,100,40.00,EUR,20,1.5\n";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return new Plycrag(new PrintWriter(out, true), new PrintWriter(err, true)).run(arguments);
  }

  private static List<String> paths(String... named) {
    InputCopies copies = new InputCopies();
    for (String one : named) {
      copies.add(Path.of(one), new byte[0]);
    }
    return copies.files().stream().map(OutputFile::path).toList();
  }

  @Test
  void whatLiesUnderTheParameterFileKeepsItsPath() {
    assertThat(paths("slip.toml", "lists/prices.csv", "./holes.csv"))
        .containsExactly("inputs/slip.toml", "inputs/lists/prices.csv", "inputs/holes.csv");
  }

  @Test
  void whatLiesElsewhereHasItsNameAlone() {
    assertThat(paths("slip.toml", "../prices.csv", "/yard/holes.csv"))
        .containsExactly("inputs/slip.toml", "inputs/prices.csv", "inputs/holes.csv");
  }

  @Test
  void noTwoHaveOneNameWhateverItsLetters() {
    assertThat(paths("slip.toml", "../a/List.csv", "../b/list.csv", "../c/list.csv"))
        .containsExactly(
            "inputs/slip.toml", "inputs/List.csv", "inputs/list-2.csv", "inputs/list-3.csv");
  }

  @Test
  void whatSomeFileSystemWouldMisreadIsSpelledPlainly() {
    assertThat(paths("the slip.toml", ".hidden/é.csv"))
        .containsExactly("inputs/the-slip.toml", "inputs/file.hidden/file-.csv");
  }

  @Test
  void aFolderIsMadeAgainFromItsInputsAlone() throws IOException {
    Path file = folder.resolve("given/slip.toml");
    Files.createDirectories(folder.resolve("given/lists"));
    String text =
        "[[facet]]\nlength = 1200\n[wall]\nwidth = 1200\n[stock]\nprices = \"lists/p.csv\"\n";
    Files.writeString(file, text);
    Files.writeString(folder.resolve("given/lists/p.csv"), PRICES);
    assertThat(run("build", file.toString(), "--out", folder.resolve("one").toString()))
        .as(err.toString())
        .isZero();
    Path kept = folder.resolve("one/slip/inputs");
    assertThat(TestFiles.read(kept.resolve("slip.toml"))).isEqualTo(text);
    assertThat(TestFiles.read(kept.resolve("lists/p.csv"))).isEqualTo(PRICES);

    String again = kept.resolve("slip.toml").toString();
    assertThat(run("build", again, "--out", folder.resolve("two").toString())).isZero();
    assertThat(Files.readAllBytes(folder.resolve("two/slip/manifest.json")))
        .isEqualTo(Files.readAllBytes(folder.resolve("one/slip/manifest.json")));
  }

  @Test
  void aFolderThatWasBuiltIsComparedByWhatItKeeps() throws IOException {
    Path file = folder.resolve("slip.toml");
    Files.writeString(file, "[[facet]]\nlength = 1200\n[wall]\nwidth = 1200\n");
    String built = folder.resolve("one/slip").toString();
    assertThat(run("build", file.toString(), "--out", folder.resolve("one").toString())).isZero();
    assertThat(run("compare", file.toString(), built)).isZero();
    assertThat(out.toString()).contains("To buy: the same.");
    Files.writeString(file, "[[facet]]\nlength = 2400\n[wall]\nwidth = 1200\n");
    assertThat(run("compare", file.toString(), built)).isZero();
    assertThat(out.toString()).containsPattern("climbing face, m2 +2\\.8\\d* +1\\.4");
  }

  @Test
  void aFolderThatKeepsNothingIsToldByItsName() throws IOException {
    Path file = folder.resolve("slip.toml");
    Files.writeString(file, "[[facet]]\nlength = 1200\n");
    assertThat(run("compare", file.toString(), folder.toString())).isEqualTo(Exit.FILES);
    assertThat(err.toString())
        .contains(
            folder + ": could not be read: it keeps no parameter file that it was built from");
  }

  @Test
  void aListIsKeptAsItWasRead() {
    InputCopies copies = new InputCopies();
    copies.add(Path.of("a.csv"), "é".getBytes(StandardCharsets.UTF_8));
    assertThat(copies.files().get(0).content()).containsExactly(0xC3, 0xA9);
  }
}
