package plycrag.app.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import plycrag.document.WallPage;
import plycrag.files.OutputFile;

/** Spoken to by hand, since clients do not let their users lie about the host. */
@Timeout(60)
class PageServerTest {
  private PageServer server;
  private int port;

  @BeforeEach
  void listen() throws IOException {
    server = new PageServer("bay.toml", 0);
    port = Integer.parseInt(server.address().replaceAll(".*:|/", ""));
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static Showing wall(String title) {
    WallPage page = new WallPage(title, "", "", List.of(), List.of(), List.of(), List.of());
    return new Showing(
        page, new byte[] {7}, () -> List.of(OutputFile.text("lists/holes.csv", "mark\n")));
  }

  private Socket asked(String request, String... headers) throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
    String text = request + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\n\r\n";
    socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
    return socket;
  }

  private String answer(String request, String... headers) throws IOException {
    List<String> all =
        List.of(String.join("\r\n", headers), "Connection: close").stream()
            .filter(one -> !one.isEmpty())
            .toList();
    try (Socket socket = asked(request, all.toArray(new String[0]))) {
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private String host() {
    return "Host: 127.0.0.1:" + port;
  }

  @Test
  void waitsForAWallAndThenShowsIt() throws IOException {
    assertThat(answer("GET /", host())).contains(" 200 ", "no wall to be seen yet", "bay.toml");
    assertThat(answer("GET /wall.json", host())).contains(" 404 ");
    server.show(wall("Boat bay"));
    assertThat(answer("GET /", host())).contains(" 200 ", "Boat bay", "data-revision=\"1\"");
    assertThat(answer("GET /wall.json", host())).contains("\"title\":\"Boat bay\"");
    assertThat(answer("GET /model.glb", host())).contains("model/gltf-binary").endsWith("\u0007");
    assertThat(answer("GET /lists/holes.csv", host())).endsWith("mark\n");
  }

  @Test
  void nothingOfTheDiskIsReached() throws IOException {
    server.show(wall("Boat bay"));
    for (String path : List.of("/../pom.xml", "/pom.xml", "//etc/passwd", "/%2e%2e/pom.xml")) {
      assertThat(answer("GET " + path, host())).as(path).doesNotContain(" 200 ");
    }
  }

  @Test
  void answersNobodyElse() throws IOException {
    server.show(wall("Boat bay"));
    assertThat(answer("GET /wall.json", "Host: walls.example")).contains(" 403 ");
    assertThat(answer("GET /wall.json", "Host: localhost:" + (port + 1))).contains(" 403 ");
    assertThat(answer("GET /wall.json", host(), "Origin: http://walls.example")).contains(" 403 ");
    assertThat(answer("GET /wall.json", host(), "Origin: null")).contains(" 403 ");
    assertThat(answer("GET /wall.json", host(), "Origin: http://localhost:" + port))
        .contains(" 200 ");
    assertThat(answer("POST /wall.json", host(), "Content-Length: 0")).contains(" 405 ");
  }

  /** The lines of news, each with what it is of. */
  private static String news(BufferedReader lines, int count) throws IOException {
    StringBuilder told = new StringBuilder();
    while (told.toString().lines().filter(line -> line.startsWith("data")).count() < count) {
      String line = lines.readLine();
      if (line.matches("(id|event|data): .*")) {
        told.append(line).append('\n');
      }
    }
    return told.toString().lines().collect(Collectors.joining(" "));
  }

  @Test
  void openPagesAreToldInOrderWhatTheyHaveNotSeen() throws IOException {
    server.show(wall("Boat bay"));
    try (Socket page = asked("GET /changes?revision=1", host());
        BufferedReader lines =
            new BufferedReader(
                new InputStreamReader(page.getInputStream(), StandardCharsets.UTF_8))) {
      server.fault("bay.toml:1:1: \"what\"\nis that");
      assertThat(news(lines, 1))
          .isEqualTo(
              "id: 2 event: fault data: {\"words\":\"bay.toml:1:1: \\\"what\\\"\\nis that\"}");
      server.show(wall("Boat bay 2"));
      assertThat(news(lines, 1)).isEqualTo("id: 3 event: wall data: {}");
    }
  }

  @Test
  void whoComesBackIsToldOfTheLastAlone() throws IOException {
    server.show(wall("one"));
    server.show(wall("two"));
    server.fault("wrong");
    try (Socket page = asked("GET /changes?revision=0", host(), "Last-Event-ID: 1");
        BufferedReader lines =
            new BufferedReader(
                new InputStreamReader(page.getInputStream(), StandardCharsets.UTF_8))) {
      assertThat(news(lines, 1)).isEqualTo("id: 3 event: fault data: {\"words\":\"wrong\"}");
    }
  }

  @Test
  void aPortThatIsTakenIsToldAndOneThatIsFreedIsTakenAgain() throws IOException {
    assertThatThrownBy(() -> new PageServer("bay.toml", port)).isInstanceOf(IOException.class);
    server.close();
    new PageServer("bay.toml", port).close();
  }
}
