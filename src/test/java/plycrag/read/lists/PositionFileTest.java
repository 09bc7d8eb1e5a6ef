package plycrag.read.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.Walls;
import plycrag.finding.FindingLine;
import plycrag.finding.Place;
import plycrag.read.Parameters;
import plycrag.read.Reading;
import plycrag.wall.InsertPosition;

class PositionFileTest {
  private static final Path FOLDER = Path.of("src/test/resources/must-fail/positions");
  private static final Parameters TWO =
      Walls.parameters("[[facet]]\nname = \"port\"\n[[facet]]\nname = \"starboard\"\n");
  private static final String LIST =
      """
      # measured in spring
      v, facet ,u

      100,port,200.5
      "10 cm",starboard,2 in
      """;

  private static Reading<List<InsertPosition>> read(String text, Parameters parameters) {
    return PositionFile.read("loft.csv", text.getBytes(StandardCharsets.UTF_8), parameters);
  }

  @Test
  void readsColumnsInAnyOrderAndPlacesInAnyUnit() {
    assertThat(read(LIST, TWO).value().orElseThrow())
        .containsExactly(
            new InsertPosition("port", 200.5, 100), new InsertPosition("starboard", 2 * 25.4, 100));
  }

  @Test
  void bareNumbersAreInTheUnitOfTheParameterFile() {
    Parameters inches = Walls.parameters("[wall]\nunit = \"in\"\n[[facet]]\nname = \"bay\"\n");
    assertThat(read("u,v\n4,8.5\n", inches).value().orElseThrow())
        .containsExactly(new InsertPosition("bay", 4 * 25.4, 215.9));
  }

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void earnsItsMessages(Path file) throws IOException {
    Reading<List<InsertPosition>> reading =
        PositionFile.read(file.getFileName().toString(), Files.readAllBytes(file), TWO);
    assertThat(reading.findings().stream().map(FindingLine::of))
        .containsExactlyElementsOf(
            Files.readAllLines(file).stream()
                .takeWhile(line -> line.startsWith("# "))
                .map(line -> line.substring(2))
                .toList());
    assertThat(reading.value()).isEmpty();
  }

  @Test
  void theFolderIsNotEmpty() throws IOException {
    assertThat(files()).hasSizeGreaterThan(3);
  }

  @Property(tries = 300)
  void aDamagedListIsReadOrToldWhereItIsWrong(
      @ForAll @IntRange(max = 80) int place, @ForAll char character, @ForAll boolean special) {
    int at = Math.min(place, LIST.length());
    char put = special ? "\"\n\r,;#x".charAt(character % 7) : character;
    Reading<List<InsertPosition>> reading =
        read(LIST.substring(0, at) + put + LIST.substring(at), TWO);
    assertThat(reading.findings())
        .allSatisfy(
            finding -> {
              Place.InFile found = (Place.InFile) finding.place();
              assertThat(found.line()).isBetween(1, (int) LIST.lines().count() + 2);
              assertThat(found.column()).isBetween(1, LIST.length() + 2);
            });
  }
}
