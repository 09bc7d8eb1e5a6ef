package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.wall.GivenWall.Behind.WALK_IN;
import static plycrag.wall.GivenWall.FoldEdges.MITRED;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.finding.FindingLine;
import plycrag.units.LengthUnit;
import plycrag.wall.Frame;
import plycrag.wall.GivenFacet;
import plycrag.wall.GivenWall;
import plycrag.wall.Inserts;
import plycrag.wall.ToldLength;

class ParameterFileTest {
  private static final String FACET = "[[facet]]\n";
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  static GivenFacet rectangle(String name, double angle, double length, double width) {
    return new GivenFacet(
        name,
        angle,
        new ToldLength(ToldLength.Key.LENGTH, length),
        width,
        Optional.empty(),
        0,
        Optional.empty());
  }

  @Test
  void theShortestUsefulFile() {
    Parameters read =
        good(
            """
            [wall]
            name = "River bay"
            raise = 300
            [[facet]]
            angle = 30
            length = 2400
            width = 2400
            """);
    assertThat(read.wall())
        .isEqualTo(new GivenWall("River bay", LengthUnit.MM, 300, MITRED, WALK_IN, false));
    assertThat(read.facets()).containsExactly(rectangle("main", 30, 2400, 2400));
  }

  /** A facet at 60° is twice as long as it is high; a plumb one as long as high. */
  @Test
  void aHeightTellsTheLength() {
    Parameters read =
        good(
            """
            [[facet]]
            vertical-height = 900
            [[facet]]
            angle = 60
            vertical-height = 1200
            """);
    assertThat(read.facets().get(0).length()).isEqualTo(900);
    assertThat(read.facets().get(1).length()).isCloseTo(2400, EXACT);
  }

  @Test
  void bareNumbersAreInTheUnitOfTheFileAndTextsInTheirOwn() {
    Parameters read =
        good(
            """
            [wall]
            unit = "in"
            raise = 12
            [[facet]]
            length = "2.4 m"
            width = "8 ft 2 1/2 in"
            [machine]
            plunge-feed = "600 mm/min"
            """);
    assertThat(read.wall().raise()).isEqualTo(304.8);
    assertThat(read.facets()).containsExactly(rectangle("main", 0, 2400, 2501.9));
    assertThat(read.machine().spindle().plungeFeed()).isEqualTo(600);
  }

  @Test
  void facetsTakeTheWidthOfTheWall() {
    assertThat(good("[wall]\nwidth = 3000\n" + FACET).facets().get(0).width()).isEqualTo(3000);
  }

  @Test
  void timberMayBeNamed() {
    Frame frame = good(FACET + "[frame]\nsection = \"2x6\"\n").frame();
    assertThat(frame.breadth()).isEqualTo(38.1);
    assertThat(frame.depth()).isEqualTo(139.7);
  }

  /** Common practice for panels that may get damp, no source. */
  @ParameterizedTest
  @CsvSource({"indoors,2,3.175", "damp,3,3.175", "outdoors,3,3.175"})
  void seamsAreWiderWhereItIsDamp(String environment, double metric, double imperial) {
    String stock = FACET + "[stock]\nenvironment = \"" + environment + "\"\n";
    assertThat(good(stock).sheet().seams().gap()).isEqualTo(metric);
    assertThat(good("wall.unit = \"in\"\n" + stock).sheet().seams().gap())
        .isCloseTo(imperial, EXACT);
    assertThat(good(stock + "[sheet]\nseam-gap = 1\n").sheet().seams().gap()).isEqualTo(1);
  }

  /** The sides of a notch's mouth run along one line and do not meet. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "[[0,0],[2400,0],[2400,2400],[1500,2400],[1500,2000],[1000,2000],[1000,2400],[0,2400]]",
        "[[0,0],[2400,0],[2400,1000],[2200,1000],[2200,1300],[2400,1300],[2400,2400],[0,2400]]",
        "[[0,0],[1000,0],[1000,400],[1500,400],[1500,0],[2400,0],[2400,2400],[0,2400]]"
      })
  void outlinesMayHaveNotches(String outline) {
    assertThat(good(FACET + "outline = " + outline + "\n").facets().get(0).outline().orElseThrow())
        .hasSize(8);
  }

  @Test
  void linesTakeColumnsAndRows() {
    Inserts inserts =
        good(FACET + "[inserts]\npattern = \"lines\"\ncolumns = [100, \"35 cm\"]\nrows = [0.5]\n")
            .inserts();
    assertThat(inserts.pattern().lines().columns()).containsExactly(100.0, 350.0);
    assertThat(inserts.pattern().lines().rows()).containsExactly(0.5);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\ufeff[[facet]]\r\n\tangle = 30\r\n",
        "facet = [{ angle = 30.0 }]",
        "facet = [\n  { angle = 3e1, name = 'main' },\n]\n",
        "[[ facet ]] # the only one\n\"angle\" = 0x1E"
      })
  void anyWayToWriteTomlWillDo(String text) {
    assertThat(good(text).facets()).containsExactly(rectangle("main", 30, 2400, 2400));
  }

  @Test
  void anyLanguageMayNameTheWall() {
    String name = "Bådehuset ved Søndersø 🛶";
    assertThat(good("[wall]\nname = \"" + name + "\"\n" + FACET).wall().name()).isEqualTo(name);
  }

  @Test
  void theFileNamesTheWall() {
    byte[] content = FACET.getBytes(StandardCharsets.UTF_8);
    assertThat(ParameterFile.read("params/river-bay.toml", content).value().orElseThrow())
        .extracting(read -> read.wall().name())
        .isEqualTo("river bay");
    assertThat(lines(ParameterFile.read("a\u001b.toml", content)))
        .singleElement()
        .asString()
        .contains("1:1: wall.name: \"a?\" cannot serve as a name");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
  void utf16IsOneFinding(String charset) {
    byte[] content = FACET.getBytes(Charset.forName(charset));
    assertThat(lines(ParameterFile.read("bay.toml", content)))
        .containsExactly(
            "bay.toml:1:1: encoding: the file is UTF-16; save it again as UTF-8; UTF-8 is allowed");
  }

  @Test
  void anEmptyFileLacksItsFacet() {
    assertThat(lines(ParameterFile.read("bay.toml", new byte[0])))
        .containsExactly(
            "bay.toml:1:1: facet: there is no [[facet]]; one is needed, even an empty one");
  }

  @Test
  void anEmptyKeyHasAFinding() {
    byte[] content = ("\"\" = 3\n" + FACET).getBytes(StandardCharsets.UTF_8);
    assertThat(lines(ParameterFile.read("a.toml", content)))
        .singleElement()
        .asString()
        .startsWith("a.toml:1:1: \"\": this key stands in no table");
  }

  @Test
  void aWrongUnitIsTheOnlyFindingAboutUnits() {
    String text =
        "[wall]\nunit = \"inch\"\nraise = 12\n[[facet]]\nlength = 96\n[sheet]\nwidth = 48\n";
    assertThat(lines(ParameterFile.read("a.toml", text.getBytes(StandardCharsets.UTF_8))))
        .singleElement()
        .asString()
        .startsWith("a.toml:2:1: wall.unit: \"inch\" is not among the words for this; mm or in");
  }

  @Test
  void findingsOfOneRunStandInTheOrderOfTheFile() {
    String text = "[wall]\nraise = 1,5\nwidth = 9\nlenght = 3\n[[facet]]\nangle = 91\n";
    assertThat(lines(ParameterFile.read("a.toml", text.getBytes(StandardCharsets.UTF_8))))
        .extracting(line -> line.split(": ", 3)[0])
        .containsExactly("a.toml:2:10", "a.toml:3:1", "a.toml:4:1", "a.toml:6:1");
  }

  static Parameters good(String text) {
    Reading<Parameters> reading =
        ParameterFile.read("oar-store.toml", text.getBytes(StandardCharsets.UTF_8));
    assertThat(lines(reading)).isEmpty();
    return reading.value().orElseThrow();
  }

  private static List<String> lines(Reading<Parameters> reading) {
    return reading.findings().stream().map(FindingLine::of).toList();
  }
}
