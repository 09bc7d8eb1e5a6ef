package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /** Where a parameter file of a name and the lists that it names are kept, in their order. */
  private static List<String> paths(String file, String... named) {
    List<Path> lists = Stream.of(named).map(Path::of).toList();
    InputCopies copies = new InputCopies(lists);
    copies.add(Path.of(file), new byte[0]);
    lists.forEach(list -> copies.add(list, new byte[0]));
    return copies.files().stream().map(OutputFile::path).toList();
  }

  @Test
  void whatLiesUnderTheParameterFileKeepsItsPath() {
    assertThat(paths("slip.toml", "lists/prices.csv", "./holes.csv"))
        .containsExactly("inputs/slip.toml", "inputs/lists/prices.csv", "inputs/holes.csv");
  }

  @Test
  void whatLiesAboveLiesAboveTheCopyToo() {
    assertThat(paths("slip.toml", "../prices.csv", "../../yard/holes.csv", "steel.csv"))
        .containsExactly(
            "inputs/wall/wall/slip.toml",
            "inputs/wall/prices.csv",
            "inputs/yard/holes.csv",
            "inputs/wall/wall/steel.csv");
  }

  @Test
  void anAbsolutePathLeavesItsNameAlone() {
    assertThat(paths("slip.toml", "/yard/holes.csv"))
        .containsExactly("inputs/slip.toml", "inputs/holes.csv");
  }

  @Test
  void aFileThatIsNamedTwiceIsKeptOnce() {
    assertThat(paths("slip.toml", "list.csv", "lists/../list.csv"))
        .containsExactly("inputs/slip.toml", "inputs/list.csv");
  }

  @Test
  void noTwoHaveOnePlaceWhateverItsLetters() {
    assertThat(paths("slip.toml", "/a/List.csv", "/b/list.csv", "/c/list.csv"))
        .containsExactly(
            "inputs/slip.toml", "inputs/List.csv", "inputs/2/list.csv", "inputs/3/list.csv");
  }

  @Test
  void noFileIsWhereAnotherNeedsAFolder() {
    assertThat(paths("slip.toml", "/a/lists", "lists/prices.csv"))
        .containsExactly("inputs/slip.toml", "inputs/lists", "inputs/2/lists/prices.csv");
  }

  @Test
  void whatSomeFileSystemWouldMisreadIsSpelledPlainly() {
    assertThat(paths("the slip.toml", ".hidden/é.csv"))
        .containsExactly("inputs/the-slip.toml", "inputs/file.hidden/file-.csv");
  }

  @ParameterizedTest
  @CsvSource({"lists/p.csv, slip.toml", "../p.csv, wall/slip.toml"})
  void aFolderIsMadeAgainFromItsInputsAlone(String list, String kept) throws IOException {
    Path file = folder.resolve("given/slip.toml");
    Files.createDirectories(folder.resolve("given/lists"));
    String text =
        "[[facet]]\nlength = 1200\n[wall]\nwidth = 1200\n[stock]\nprices = \"" + list + "\"\n";
    Files.writeString(file, text);
    Files.writeString(file.resolveSibling(list), PRICES);
    assertThat(run("build", file.toString(), "--out", folder.resolve("one").toString()))
        .as(err.toString())
        .isZero();
    Path copy = folder.resolve("one/slip/inputs").resolve(kept);
    assertThat(TestFiles.read(copy)).isEqualTo(text);
    assertThat(TestFiles.read(copy.resolveSibling(list))).isEqualTo(PRICES);

    assertThat(run("build", copy.toString(), "--out", folder.resolve("two").toString())).isZero();
    assertThat(Files.readAllBytes(folder.resolve("two/slip/manifest.json")))
        .isEqualTo(Files.readAllBytes(folder.resolve("one/slip/manifest.json")));
    assertThat(run("compare", file.toString(), folder.resolve("one/slip").toString())).isZero();
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
  void aFolderThatWasNotBuiltIsToldByItsName() throws IOException {
    Path file = folder.resolve("slip.toml");
    Files.writeString(file, "[[facet]]\nlength = 1200\n");
    assertThat(run("compare", file.toString(), folder.toString())).isEqualTo(Exit.FILES);
    assertThat(err.toString())
        .contains(folder + ": could not be read: it is no folder that was built");
  }

  @Test
  void aPartWithoutInputsSaysThatItKeepsNone() throws IOException {
    Path file = folder.resolve("slip.toml");
    Files.writeString(file, "[[facet]]\nlength = 1200\n");
    String made = folder.resolve("one").toString();
    assertThat(run("build", file.toString(), "--only", "lists", "--out", made)).isZero();
    String part = folder.resolve("one/slip-part").toString();
    assertThat(run("compare", file.toString(), part)).isEqualTo(Exit.FILES);
    assertThat(err.toString()).contains("it keeps no parameter file that it was built from");
  }

  /** The rest of the folder is of another wall then. */
  @Test
  void anInputThatWasChangedIsTold() throws IOException {
    Path file = folder.resolve("slip.toml");
    Files.writeString(file, "[[facet]]\nlength = 1200\n");
    assertThat(run("build", file.toString(), "--out", folder.resolve("one").toString())).isZero();
    Path built = folder.resolve("one/slip");
    Files.writeString(built.resolve("inputs/slip.toml"), "[[facet]]\nlength = 1300\n");
    assertThat(run("compare", file.toString(), built.toString())).isEqualTo(Exit.FILES);
    assertThat(err.toString()).contains("inputs/slip.toml was changed after the folder was built");
  }

  @Test
  void aListIsKeptAsItWasRead() {
    InputCopies copies = new InputCopies(List.of());
    copies.add(Path.of("a.csv"), "é".getBytes(StandardCharsets.UTF_8));
    assertThat(copies.files().get(0).content()).containsExactly(0xC3, 0xA9);
  }
}
