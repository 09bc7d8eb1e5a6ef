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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.Walls;
import plycrag.catalog.FlatSteel;
import plycrag.catalog.FlatSteel.Holes;
import plycrag.catalog.FlatSteel.Legs;
import plycrag.catalog.FlatSteel.ScrewSizes;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.finding.FindingLine;
import plycrag.layout.Layout;
import plycrag.layout.LayoutPlan;
import plycrag.layout.joints.Hardware;
import plycrag.read.Parameters;
import plycrag.read.Reading;
import plycrag.read.WallMaker;
import plycrag.units.LengthUnit;

class SteelFileTest {
  private static final Path FOLDER = Path.of("src/test/resources/must-fail/steel");
  private static final String LIST =
      """
      # from the shop on the quay
      article,shape,leg,width,thickness,holes,lines,first,pitch,gauge,screw
      "corner 70, strong",angle,70,44,2.5,4,2,36,20,18,5
      plate 180,strap,9 cm,40,2,2,1,62,20,,4.5
      """;

  private static Reading<List<FlatSteel>> read(String text, LengthUnit unit) {
    return SteelFile.read("quay.csv", text.getBytes(StandardCharsets.UTF_8), unit);
  }

  @Test
  void readsColumnsInAnyOrderAndLengthsInAnyUnit() {
    assertThat(read(LIST, LengthUnit.MM).value().orElseThrow())
        .containsExactly(
            new FlatSteel(
                Shape.ANGLE,
                "corner 70, strong",
                new Legs(70, 44, 2.5),
                new Holes(4, 2, 36, 20, 18),
                new ScrewSizes(5, 5),
                "your catalogue"),
            new FlatSteel(
                Shape.STRAP,
                "plate 180",
                new Legs(90, 40, 2),
                new Holes(2, 1, 62, 20, 0),
                new ScrewSizes(4.5, 4.5),
                "your catalogue"));
  }

  /** What the user can buy is taken wherever it fits, though others would come first by size. */
  @Test
  void whatTheUserCanBuyIsTakenFirst() {
    Parameters parameters =
        Walls.parameters("[[facet]]\nwidth = 1220\nlength = 1220\n[inserts]\npattern = \"none\"\n");
    List<FlatSteel> own = read(LIST, LengthUnit.MM).value().orElseThrow();
    Layout bought = LayoutPlan.of(WallMaker.of(parameters.preferring(own), List.of()));
    Layout asked = LayoutPlan.of(WallMaker.of(parameters, List.of()));
    assertThat(articles(bought)).isNotEmpty().allMatch("corner 70, strong"::equals);
    assertThat(articles(asked)).hasSameSizeAs(articles(bought)).allMatch(String::isEmpty);
  }

  private static List<String> articles(Layout layout) {
    return layout.hardware().stream()
        .map(Hardware::form)
        .filter(Hardware.Steel.class::isInstance)
        .map(form -> ((Hardware.Steel) form).fit().steel().article())
        .toList();
  }

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void earnsItsMessages(Path file) throws IOException {
    Reading<List<FlatSteel>> reading =
        SteelFile.read(file.getFileName().toString(), Files.readAllBytes(file), LengthUnit.MM);
    assertThat(reading.findings().stream().map(FindingLine::of))
        .containsExactlyElementsOf(
            Files.readAllLines(file).stream()
                .takeWhile(line -> line.startsWith("# "))
                .map(line -> line.substring(2))
                .toList());
    assertThat(reading.value()).isEmpty();
  }

  @Property(tries = 300)
  void noContentMakesItThrow(@ForAll String text) {
    assertThat(read(text, LengthUnit.MM)).isNotNull();
    assertThat(read(LIST + text, LengthUnit.MM)).isNotNull();
  }
}
