package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.read.ParameterFileTest.good;
import static plycrag.read.ParameterFileTest.rectangle;
import static plycrag.wall.GivenWall.Behind.WALK_IN;
import static plycrag.wall.GivenWall.FoldEdges.MITRED;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import plycrag.catalog.BoltThread;
import plycrag.units.LengthUnit;
import plycrag.wall.Clearances;
import plycrag.wall.Density;
import plycrag.wall.Frame;
import plycrag.wall.GivenWall;
import plycrag.wall.Inserts;
import plycrag.wall.Output;
import plycrag.wall.Pattern;
import plycrag.wall.Scattering;
import plycrag.wall.Screws;
import plycrag.wall.Sheet;
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

/** What holds where a file says nothing. */
class DefaultsTest {
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
                new Machine.Heights(0.5, 15, 25),
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
  void programsInInchesHaveFourDigits() {
    Controller controller =
        good(FACET + "[machine]\nprogram-unit = \"in\"\n").machine().equipment().controller();
    assertThat(controller.decimals()).isEqualTo(4);
  }

  private static Timber timber(String toml) {
    return good(toml).supports().usual().orElseThrow().timber();
  }
}
