package plycrag.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import plycrag.MeetingTexts;
import plycrag.OutlineTexts;
import plycrag.TestFiles;
import plycrag.WallTexts;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Scene.Kind;
import plycrag.files.geojson.FeatureMapWriter;
import plycrag.files.gltf.SceneWriter;
import plycrag.glb.GlbFile;
import plycrag.glb.GlbFile.Node;
import plycrag.glb.Handedness;
import plycrag.glb.Mesh;
import plycrag.glb.Space;
import plycrag.lists.LayoutMap;

/** The model as another reader finds it in the file. */
class WallModelTest {
  /** Nothing about it is the same from the left and from the right. */
  private static final String ASYMMETRIC =
      """
      [wall]
      raise = 100
      [[facet]]
      name = "left"
      angle = 20
      outline = [[0, 0], [1600, 0], [1600, 2200], [500, 1500]]
      [[facet]]
      name = "right"
      beside = "left"
      turn = 50
      width = 1000
      length = 2200
      """;

  private static GlbFile file(CheckedLayout wall) {
    return GlbFile.read(SceneWriter.write(WallModel.of(wall)));
  }

  private static Node node(GlbFile file, String name) {
    return file.nodes().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void anAsymmetricWallIsNotMirrored() {
    CheckedLayout wall = Walls.judged(ASYMMETRIC);
    List<Node> nodes = file(wall).nodes();
    String map = FeatureMapWriter.write(LayoutMap.of(wall));
    assertThat(nodes.stream().filter(node -> node.kind().equals("insert")).map(Node::facet))
        .contains("left", "right");
    assertThat(Handedness.faults(nodes, map)).isEmpty();
    assertThat(Handedness.faults(nodes.stream().map(Node::mirrored).toList(), map)).isNotEmpty();
  }

  /** Nor is one that is told to be built the other way round: map and model turn together. */
  @Test
  void theImageOfAWallHoldsItsHandednessToo() {
    CheckedLayout wall =
        Walls.judged(ASYMMETRIC.replace("raise = 100", "raise = 100\nmirrored = true"));
    List<Node> nodes = file(wall).nodes();
    String map = FeatureMapWriter.write(LayoutMap.of(wall));
    assertThat(Handedness.faults(nodes, map)).isEmpty();
    assertThat(Handedness.faults(nodes.stream().map(Node::mirrored).toList(), map)).isNotEmpty();
  }

  /**
   * Two facets that lean 30° apart. The lower sheet is 1000 mm high in front and 18 · tan 15° more
   * behind, so that its upper edge ends in the plane that halves the fold.
   */
  @Test
  void bevelsAreTrue() {
    GlbFile file =
        file(
            Walls.judged(
                """
                [wall]
                width = 1200
                [[facet]]
                name = "low"
                length = 1000
                [[facet]]
                name = "high"
                angle = 30
                length = 1000
                """));
    double more = 0.018 * Math.tan(Math.toRadians(15));
    Mesh sheet = node(file, "P1").mesh();
    assertThat(highest(sheet, 0)).isCloseTo(1, within(1e-6));
    assertThat(highest(sheet, -0.018)).isCloseTo(1 + more, within(2e-6));
    assertThat(sheet.volume()).isCloseTo(1.2 * 0.018 * (1 + more / 2), within(1e-7));
  }

  private static double highest(Mesh mesh, double z) {
    return mesh.corners()
        .filter(corner -> Math.abs(corner.z() - z) < 1e-6)
        .mapToDouble(Space::y)
        .max()
        .orElseThrow();
  }

  @Test
  void whatIsToldOfTheRoomStandsWhereItIsTold() {
    GlbFile file =
        file(
            Walls.judged(
                """
                [[facet]]
                width = 1200
                length = 2200
                [room]
                ceiling = 2500
                ceiling-pitch = -10
                left = 300
                right = 400
                front = 4000
                floor-fall = 12
                [[obstacle]]
                name = "P1"
                left = 1300
                out = 0
                width = 200
                depth = 300
                height = 900
                [mat]
                thickness = 250
                front = 2500
                side = 200
                """));
    assertThat(file.nodes("room"))
        .extracting(Node::name)
        .containsExactly("floor", "ceiling", "room left", "room right", "room front", "P1 (2)");
    assertThat(most(file, "room left")).isCloseTo(-0.3, within(1e-6));
    assertThat(-most(file.nodes("room").get(3).mirrored())).isCloseTo(1.6, within(1e-6));
    assertThat(node(file, "floor").mesh().corners().mapToDouble(Space::y).max().orElseThrow())
        .isCloseTo(0.003, within(1e-6));
    double low = node(file, "ceiling").mesh().corners().mapToDouble(Space::y).min().orElseThrow();
    assertThat(low).isCloseTo(2.5 - 4 * Math.tan(Math.toRadians(10)), within(1e-6));
    assertThat(node(file, "P1 (2)").mesh().volume()).isCloseTo(0.2 * 0.3 * 0.9, within(1e-6));
    assertThat(node(file, "mat 1").mesh().volume()).isCloseTo(1.6 * 2.5 * 0.25, within(1e-6));
  }

  /**
   * Rafters at 45° from 1000 mm, 500 mm behind, meet a ceiling of 2500 mm 1000 mm out, and 400 mm
   * less of it at the right end, where it is 400 mm lower.
   */
  @Test
  void raftersEndWhereTheCeilingIsLower() {
    String room =
        """
        [[facet]]
        width = 1200
        length = 1300
        [room]
        left = 0
        right = 0
        front = 4000
        ceiling = 2500
        knee-wall-height = 1000
        knee-wall-behind = 500
        rafter-pitch = 45
        ceiling-pitch-across = %s
        """;
    String falls = Double.toString(-Math.toDegrees(Math.atan(1.0 / 3)));
    GlbFile file = file(Walls.judged(room.formatted(falls)));
    assertThat(file.nodes("room"))
        .extracting(Node::name)
        .containsExactly(
            "floor", "ceiling", "rafters", "knee wall", "room left", "room right", "room front");
    assertThat(node(file, "rafters").mesh().volume())
        .isCloseTo(1.2 * (1.5 + 1.1) / 2 * 0.05, within(1e-6));
    assertThat(node(file, "ceiling").mesh().volume())
        .isCloseTo(1.2 * (3 + 3.4) / 2 * 0.05, within(1e-6));
    assertThat(node(file, "knee wall").mesh().corners().mapToDouble(Space::y).max().orElseThrow())
        .isCloseTo(1, within(1e-6));
  }

  private static double most(GlbFile file, String name) {
    return most(node(file, name));
  }

  private static double most(Node node) {
    return node.mesh().corners().mapToDouble(Space::x).max().orElseThrow();
  }

  @Test
  void aWallThatABuildingHoldsHasTheBuildingBehindIt() {
    GlbFile file =
        file(
            Walls.judged(
                """
                [[facet]]
                angle = 15
                width = 1200
                length = 2200
                [support]
                kind = "fixed"
                fixed-to = "concrete"
                """));
    Mesh building = node(file, "building").mesh();
    double face = building.corners().mapToDouble(Space::z).max().orElseThrow();
    double behind =
        file.nodes("support", "member", "piece").stream()
            .flatMap(node -> node.mesh().corners())
            .mapToDouble(Space::z)
            .min()
            .orElseThrow();
    assertThat(file.nodes("support")).isNotEmpty();
    assertThat(behind).isCloseTo(face, within(1e-5));
    assertThat(file.nodes("hardware")).extracting(Node::name).contains("AN1");
  }

  @Test
  void aRefusedWallSaysThatItIsNotForMaking() {
    CheckedLayout refused = Walls.judged(TestFiles.text("must-fail/layout/top-row-in-plate.toml"));
    assertThat(refused.isApproved()).isFalse();
    assertThat(file(refused).title()).endsWith(", NOT FOR MAKING");
    assertThat(file(refused).nodes("piece")).isNotEmpty();
  }

  /** Whatever people draw, approved or refused: every part of it is closed. */
  @Property(tries = 12)
  void everyPartOfAnyWallIsClosed(@ForAll("walls") String text) {
    GlbFile file = file(Walls.judged(Walls.asAsked(text)));
    for (Node node : file.nodes()) {
      if (!node.mesh().triangles().isEmpty()) {
        assertThat(node.mesh().volume()).as(node.name()).isPositive();
        assertThat(node.mesh().isWatertight()).as(node.name()).isTrue();
      }
    }
    assertThat(file.nodes(Kind.PIECE.word())).isNotEmpty();
  }

  @Provide
  Arbitrary<String> walls() {
    return Arbitraries.oneOf(
        WallTexts.any(),
        WallTexts.roomy(),
        MeetingTexts.corners(),
        MeetingTexts.openingsAtFolds(),
        OutlineTexts.any());
  }
}
