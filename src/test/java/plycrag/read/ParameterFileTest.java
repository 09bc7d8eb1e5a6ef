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
import plycrag.catalog.BoltThread;
import plycrag.finding.FindingLine;
import plycrag.units.LengthUnit;
import plycrag.wall.Clearances;
import plycrag.wall.Density;
import plycrag.wall.Frame;
import plycrag.wall.GivenFacet;
import plycrag.wall.GivenWall;
import plycrag.wall.Inserts;
import plycrag.wall.Output;
import plycrag.wall.Pattern;
import plycrag.wall.Scattering;
import plycrag.wall.Screws;
import plycrag.wall.Sheet;
import plycrag.wall.ToldLength;
import plycrag.wall.buying.Section;
import plycrag.wall.machine.ChangePlace;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.MachineLimits;
import plycrag.wall.machine.Pins;
import plycrag.wall.machine.ProgramFrame;
import plycrag.wall.machine.Routing;
import plycrag.wall.machine.SpeedRange;
import plycrag.wall.room.GivenSupport.Timber;

class ParameterFileTest {
  private static final String FACET = "[[facet]]\n";
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static final Controller PLAINEST =
      new Controller(
          Controller.Cycles.MOVES,
          Controller.ToolChange.PROGRAM,
          new ChangePlace(100, Optional.empty(), Optional.empty(), false),
          false,
          Controller.DwellUnit.SECONDS,
          new Controller.Text(Controller.Comments.PARENTHESES, false, 72),
          LengthUnit.MM,
          3,
          ProgramFrame.NONE);

  private static GivenFacet rectangle(String name, double angle, double length, double width) {
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

  /**
   * The numbers of the parameter reference, written out by hand; EN 1995-1-1 Table 8.2 for 3d, 7d.
   */
  @Test
  void defaultsOfMillimetreFiles() {
    Parameters read = good(FACET);
    assertThat(read.wall())
        .isEqualTo(new GivenWall("oar store", LengthUnit.MM, 0, MITRED, WALK_IN, false));
    assertThat(read.facets()).containsExactly(rectangle("main", 0, 2400, 2400));
    assertThat(read.sheet())
        .isEqualTo(
            new Sheet(
                2440,
                1220,
                18,
                new Sheet.Laying(
                    Optional.empty(), Sheet.Bond.ALIGNED, Optional.empty(), Sheet.Grain.ALONG),
                new Sheet.Seams(2, 300, 0)));
    assertThat(read.frame())
        .isEqualTo(
            new Frame(
                45,
                90,
                400,
                Frame.SeamBacking.DOUBLED,
                Frame.EdgeStuds.SINGLE,
                Frame.LongStuds.REFUSED,
                Optional.empty()));
    assertThat(read.stock().lengths())
        .containsExactly(2400.0, 3000.0, 3600.0, 4200.0, 4800.0, 5400.0, 6000.0);
    assertThat(read.stock().kerf()).isEqualTo(3);
    assertThat(read.screws()).isEqualTo(new Screws(4.5, 50, true, 150, 300));
    assertThat(read.clearance())
        .isEqualTo(
            new Clearances(
                new Clearances.Flange(4, 12, 10),
                2,
                1,
                new Clearances.Screw(5, 13.5, 13.5, 31.5),
                new Clearances.ScrewPoint(27, 5)));
    assertThat(read.output().dxf()).isEqualTo(Output.DxfVersion.R2000);
    assertThat(read.output().paper()).isEqualTo(Output.Paper.A4);
  }

  /** Rails of 140 mm or 5.5 in; else as deep as the frame, and ledgers 90 mm or 3.5 in off. */
  @Test
  void timberOfASupportFollowsTheFrame() {
    String support = FACET + "[support]\nkind = \"freestanding\"\n";
    assertThat(timber(support + "[frame]\nsection = [45, 120]\n"))
        .isEqualTo(new Timber(140, 120, 120, 120, new Section(90, 120)));
    assertThat(timber("[wall]\nunit = \"in\"\n" + support))
        .isEqualTo(new Timber(139.7, 88.9, 88.9, 88.9, new Section(88.9, 88.9)));
    assertThat(timber(support + "tie-depth = 70\n"))
        .isEqualTo(new Timber(140, 90, 70, 90, new Section(90, 70)));
  }

  /** Hung ledgers lie flat: ties are not held against their other side. */
  @Test
  void timberOfASupportIsAsTold() {
    String told =
        """
        rail-depth = 90
        post-depth = 120
        tie-depth = 100
        brace-depth = 70
        ledger-section = [60, 80]
        """;
    assertThat(timber(FACET + "[support]\nkind = \"hung\"\n" + told))
        .isEqualTo(new Timber(90, 120, 100, 70, new Section(60, 80)));
  }

  private static Timber timber(String toml) {
    return good(toml).support().orElseThrow().timber();
  }

  @Test
  void defaultsOfInsertsAndMachine() {
    Parameters read = good(FACET);
    assertThat(read.inserts())
        .isEqualTo(
            new Inserts(
                new Pattern(
                    Pattern.Kind.GRID,
                    new Pattern.Pitch(200, 200, 200),
                    new Pattern.Lines(List.of(), List.of()),
                    new Density(25, 25, Density.Per.SQUARE_METRE),
                    new Scattering(180, 180, 1),
                    new Pattern.Fit(Pattern.Symmetry.NONE, 100)),
                Optional.empty(),
                new Inserts.Fastening(Inserts.Fixing.HAMMER_IN, 3, BoltThread.M10),
                new Inserts.Body(12, 26, 12, Optional.empty()),
                new Inserts.BoltZone(16, 50),
                new Inserts.Blocked(Inserts.WhenBlocked.SOLVE, 75)));
    assertThat(read.machine())
        .isEqualTo(
            new Machine(
                new Machine.Zero(Machine.ZZero.SPOILBOARD, Machine.Origin.LOWER_LEFT),
                new Machine.Heights(0.5, 5, 25),
                new Machine.Spindle(4000, 600, 3),
                new Machine.Work(
                    Optional.empty(),
                    Optional.empty(),
                    new Pins(6, 8),
                    new Routing(
                        Routing.Outlines.NONE,
                        Routing.Direction.CLIMB,
                        12,
                        4,
                        0.5,
                        new Routing.Manner(Routing.Entry.RAMP, 0))),
                new Machine.Equipment(
                    new MachineLimits(
                        new MachineLimits.Travel(
                            Optional.empty(), Optional.empty(), Optional.empty()),
                        5000,
                        300,
                        new SpeedRange(100, 60_000),
                        MachineLimits.LongSide.AS_BUILT),
                    PLAINEST,
                    List.of(),
                    List.of())));
  }

  /** 23/32 in, 96 in and 3.5 in in millimetres at 25.4 mm; a number 10 screw is 0.19 in. */
  @Test
  void defaultsOfInchFiles() {
    Parameters read = good("[wall]\nunit = \"in\"\n" + FACET);
    assertThat(read.facets()).containsExactly(rectangle("main", 0, 2438.4, 2438.4));
    assertThat(read.sheet().thickness()).isEqualTo(18.25625);
    assertThat(read.sheet().seams().gap()).isEqualTo(3.175);
    assertThat(read.frame().depth()).isEqualTo(88.9);
    assertThat(read.stock().lengths()).hasSize(6).startsWith(2438.4).endsWith(6096.0);
    assertThat(read.screws().diameter()).isEqualTo(4.826);
    assertThat(read.clearance().flange().toTimber()).isEqualTo(3.96875);
    assertThat(read.clearance().screw().toMemberEnd()).isCloseTo(7 * 4.826, EXACT);
    assertThat(read.machine().spindle().plungeFeed()).isEqualTo(609.6);
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

  /** 5 and 10 diameters without a pilot hole: EN 1995-1-1 Table 8.2. */
  @Test
  void clearancesOfScrewsFollowTheScrew() {
    Parameters read = good(FACET + "[screws]\ndiameter = 6\npredrilled = false\n");
    assertThat(read.clearance().screw().toSheetEdge()).isEqualTo(30);
    assertThat(read.clearance().screw().toMemberEdge()).isEqualTo(30);
    assertThat(read.clearance().screw().toMemberEnd()).isEqualTo(60);
    assertThat(read.clearance().point().penetration()).isEqualTo(36);
  }

  @Test
  void facetsTakeTheWidthOfTheWall() {
    assertThat(good("[wall]\nwidth = 3000\n" + FACET).facets().get(0).width()).isEqualTo(3000);
  }

  @Test
  void programsInInchesHaveFourDigits() {
    Controller controller =
        good(FACET + "[machine]\nprogram-unit = \"in\"\n").machine().equipment().controller();
    assertThat(controller.decimals()).isEqualTo(4);
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
            "bay.toml:1:1: encoding: the file is UTF-16; UTF-8 is allowed; save it again as UTF-8");
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

  private static Parameters good(String text) {
    Reading<Parameters> reading =
        ParameterFile.read("oar-store.toml", text.getBytes(StandardCharsets.UTF_8));
    assertThat(lines(reading)).isEmpty();
    return reading.value().orElseThrow();
  }

  private static List<String> lines(Reading<Parameters> reading) {
    return reading.findings().stream().map(FindingLine::of).toList();
  }
}
