package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plycrag.wall.GivenWall;

class ReferencePageTest {
  private static final Path PAGE = Path.of("src/docs/parameters.md");

  @Test
  void thePublishedPageIsTheGeneratedOne() throws IOException {
    assertThat(Files.readString(PAGE)).isEqualTo(ReferencePage.markdown());
  }

  @Test
  void theExampleOnThePageIsRead() {
    Matcher example =
        Pattern.compile("```toml\n(.*?)```", Pattern.DOTALL).matcher(ReferencePage.markdown());
    assertThat(example.find()).isTrue();
    byte[] content = example.group(1).getBytes(StandardCharsets.UTF_8);
    assertThat(ParameterFile.read("bay.toml", content).value().map(Parameters::wall))
        .map(GivenWall::name)
        .isEqualTo(Optional.of("River bay"));
  }

  @Test
  void noCellBreaksItsTable() {
    assertThat(ReferencePage.markdown().lines().filter(line -> line.startsWith("|")))
        .allSatisfy(line -> assertThat(line.chars().filter(each -> each == '|')).hasSize(5));
  }
}
