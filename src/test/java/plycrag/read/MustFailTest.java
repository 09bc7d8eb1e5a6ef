package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.finding.FindingLine;

/** Every file of the folder must earn exactly the messages in its leading comment lines. */
class MustFailTest {
  private static final Path FOLDER = Path.of("src/test/resources/must-fail/parameters");

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void earnsItsMessages(Path file) throws IOException {
    byte[] content = Files.readAllBytes(file);
    Reading<Parameters> reading = ParameterFile.read(file.getFileName().toString(), content);
    assertThat(reading.findings().stream().map(FindingLine::of))
        .containsExactlyElementsOf(expected(content));
    assertThat(reading.value()).isEmpty();
  }

  @Test
  void theFolderIsNotEmpty() throws IOException {
    assertThat(files()).hasSizeGreaterThan(70);
  }

  private static List<String> expected(byte[] content) {
    String text = new String(content, StandardCharsets.UTF_8).replaceFirst("^\ufeff", "");
    return text.lines().takeWhile(line -> line.startsWith("# ")).map(l -> l.substring(2)).toList();
  }
}
