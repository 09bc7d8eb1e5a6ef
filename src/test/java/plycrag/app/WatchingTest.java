package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.app.watch.PageServer;

/** A wall is shown as its files are saved. */
class WatchingTest {
  private static final String WALL =
      "[wall]\nname = \"NAME\"\nwidth = 1200\n[[facet]]\nlength = 1200\n";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final Terminal terminal =
      Terminal.unattended(new PrintWriter(out, true), new PrintWriter(err, true));
  private PageServer server;

  @BeforeEach
  void listen() throws IOException {
    server = new PageServer("wall.toml", 0);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private Path save(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.deleteIfExists(file);
    return Files.writeString(file, text);
  }

  private String shown(String path) throws IOException {
    try (InputStream in = URI.create(server.address() + path).toURL().openStream()) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private Watching watching(Path file) {
    return new Watching(new Source(file), server, terminal);
  }

  @Test
  void aSaveIsShownAndAMistakeLeavesTheLastGoodWall() throws IOException {
    Watching watching = watching(save("wall.toml", WALL.replace("NAME", "Slipway")));
    watching.lookAgain();
    assertThat(shown("wall.json")).contains("\"title\":\"Slipway\"");

    save("wall.toml", WALL.replace("NAME", "Boathouse"));
    watching.lookAgain();
    assertThat(shown("wall.json")).contains("\"title\":\"Boathouse\"");

    save("wall.toml", WALL.replace("width", "widht"));
    watching.lookAgain();
    assertThat(err.toString()).contains("wall.toml:3:1: ", "width");
    assertThat(shown("wall.json")).contains("\"title\":\"Boathouse\"");
  }

  @Test
  void nothingIsDoneWhereNothingWasSaved() throws IOException {
    Watching watching = watching(save("wall.toml", WALL));
    watching.lookAgain();
    String once = out.toString();
    watching.lookAgain();
    assertThat(out.toString()).isEqualTo(once);
  }

  @Test
  void aListThatTheFileNamesIsFollowedToo() throws IOException {
    save("places.csv", "facet,u,v\nmain,300,300\n");
    String listed =
        WALL + "name = \"main\"\n[inserts]\npattern = \"file\"\npositions = \"places.csv\"\n";
    Watching watching = watching(save("wall.toml", listed));
    watching.lookAgain();
    String before = shown("wall.json") + err;
    save("places.csv", "facet,u,v\nmain,300,300\nmain,610,444\n");
    watching.lookAgain();
    assertThat(shown("wall.json") + err).isNotEqualTo(before);
  }

  @Test
  void aFileThatIsNotThereYetIsWaitedFor() throws IOException {
    Watching watching = watching(folder.resolve("wall.toml"));
    watching.lookAgain();
    assertThat(err.toString()).contains("there is no such file");
    assertThat(shown("")).contains("no wall to be seen yet");
    save("wall.toml", WALL);
    watching.lookAgain();
    assertThat(shown("")).contains("id=\"model\"");
  }

  @Test
  void whatABuildWouldWriteIsServed() throws IOException {
    watching(save("wall.toml", WALL)).lookAgain();
    assertThat(shown("lists/holes.csv")).startsWith("mark,facet,");
    assertThat(folder).isDirectoryContaining(file -> file.endsWith("wall.toml"));
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void standardInputAndPortsThatThereAreNotAreWrong() {
    Plycrag program = new Plycrag(terminal);
    assertThat(program.run("watch", "-")).isEqualTo(2);
    assertThat(program.run("watch", "wall.toml", "--port", "70000")).isEqualTo(2);
    assertThat(err.toString()).contains("saved", "0 to 65535");
  }
}
