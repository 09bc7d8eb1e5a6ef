package plycrag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.glb.GlbFile;
import plycrag.glb.GlbFile.Node;
import plycrag.glb.Handedness;
import plycrag.glb.Space;
import plycrag.wall.room.Room.Handling;

/** The model of every sample, read by itself, against the other files of its folder. */
class ModelAgreesTest {
  /** What may be shared of depth, m. */
  private static final double SHARED = 0.0005;

  /** How far before an insert nothing may stand, m, and how far before it its own sheet ends. */
  private static final double HAND = 0.15;

  private static final double JUST_BEFORE = 0.0001;

  static List<Path> folders() {
    return TestFiles.samples().stream().map(ModelAgreesTest::folder).toList();
  }

  static List<Path> samples() {
    return TestFiles.samples();
  }

  private static Path folder(Path sample) {
    return Path.of("out-samples", sample.getFileName().toString().replace(".toml", ""));
  }

  private static GlbFile model(Path folder) {
    return GlbFile.read(folder.resolve("model.glb"));
  }

  private static List<CSVRecord> list(Path folder, String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(TestFiles.read(folder.resolve(name)), format)) {
      return parser.getRecords();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static List<String> names(GlbFile model, String... kinds) {
    return model.nodes(kinds).stream().map(Node::name).toList();
  }

  @ParameterizedTest
  @MethodSource("folders")
  void noTwoPartsHaveOneName(Path folder) {
    assertThat(names(model(folder), "piece", "member", "support", "hardware", "insert", "screw"))
        .doesNotHaveDuplicates();
    assertThat(model(folder).nodes()).extracting(Node::name).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("folders")
  void everyStickOfTheCutListStandsThere(Path folder) {
    List<String> listed =
        list(folder, "lists/cut-list.csv").stream()
            .flatMap(
                row ->
                    Stream.of(row.get("mark").split(" "))
                        .map(mark -> row.get("facet") + " " + mark))
            .toList();
    List<String> standing = new ArrayList<>();
    for (Node node : model(folder).nodes("member", "support")) {
      standing.add((node.facet().isEmpty() ? "support" : node.facet()) + " " + node.name());
    }
    assertThat(standing).isNotEmpty().containsExactlyInAnyOrderElementsOf(listed);
  }

  /** Screws that nothing drills for are in the list of fasteners alone. */
  @ParameterizedTest
  @MethodSource("folders")
  void everyHoleOfTheListIsAnInsertOrAScrew(Path folder) {
    for (CSVRecord row : list(folder, "lists/holes.csv")) {
      if (row.get("kind").matches("insert|screw")) {
        assertThat(names(model(folder), row.get("kind"))).contains(row.get("mark"));
      }
    }
    long inserts =
        list(folder, "lists/holes.csv").stream()
            .filter(row -> row.get("kind").equals("insert"))
            .count();
    assertThat(model(folder).nodes("insert")).hasSize((int) inserts).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("folders")
  void everyBodyIsClosed(Path folder) {
    assertThat(model(folder).nodes("piece", "member", "support", "mat", "room"))
        .isNotEmpty()
        .allMatch(node -> node.mesh().isWatertight(), "is watertight")
        .allMatch(node -> node.mesh().volume() > 0, "is not turned inside out");
  }

  /**
   * The figure has three decimals; of bevelled sheets it leaves out the square of what their edges
   * slant, no more than 18 mm · (18 mm)² a piece, and corners lie on the micrometre: together less
   * than a part in ten thousand.
   */
  @ParameterizedTest
  @MethodSource("samples")
  void itWeighsWhatTheFiguresSay(Path sample) {
    Handling handling = Walls.sample(sample).wall().room().handling();
    GlbFile model = model(folder(sample));
    double mass =
        volume(model.nodes("piece")) * handling.sheetDensity()
            + volume(model.nodes("member", "support")) * handling.timberDensity();
    double told =
        list(folder(sample), "lists/figures.csv").stream()
            .filter(row -> row.get("figure").equals("mass of sheets and timber as built"))
            .mapToDouble(row -> Double.parseDouble(row.get("value")))
            .sum();
    assertThat(mass).isCloseTo(told, within(0.0005 + told * 1e-4)).isPositive();
  }

  private static double volume(List<Node> nodes) {
    return nodes.stream().mapToDouble(node -> node.mesh().volume()).sum();
  }

  /** Hardware goes through timber: {@code HardwareAgreesTest} holds it. */
  @ParameterizedTest
  @MethodSource("folders")
  void noTwoPartsStandInOnePlace(Path folder) {
    List<Node> parts =
        model(folder).nodes("piece", "member", "support").stream()
            .filter(node -> !node.mesh().triangles().isEmpty())
            .toList();
    List<String> meeting = new ArrayList<>();
    for (int at = 0; at < parts.size(); at++) {
      for (Node other : parts.subList(0, at)) {
        if (!parts.get(at).mesh().isFarFrom(other.mesh()) && meet(parts.get(at), other)) {
          meeting.add(parts.get(at).name() + " and " + other.name());
        }
      }
    }
    assertThat(meeting).isEmpty();
  }

  private static boolean meet(Node one, Node other) {
    if (one.mesh().isConvex()) {
      return one.mesh().holdsDeeply(other.mesh(), SHARED);
    }
    assertThat(other.mesh().isConvex()).as("one of two is convex").isTrue();
    return other.mesh().holdsDeeply(one.mesh(), SHARED);
  }

  /** A hand and a hold find room before every insert: no part of wall or building for 150 mm. */
  @ParameterizedTest
  @MethodSource("folders")
  void nothingStandsRightBeforeAnInsert(Path folder) {
    GlbFile model = model(folder);
    List<Node> parts = model.nodes("piece", "member", "support", "room");
    for (Node insert : model.nodes("insert")) {
      Space out = insert.turned(new Space(0, 0, 1));
      Space from = insert.at().plus(out.times(JUST_BEFORE));
      assertThat(parts)
          .as(insert.name())
          .noneMatch(part -> part.mesh().isMet(from, out, HAND - JUST_BEFORE));
    }
  }

  @ParameterizedTest
  @MethodSource("folders")
  void itIsTheWallOfTheMapAndNotItsMirrorImage(Path folder) {
    List<Node> nodes = model(folder).nodes();
    String map = TestFiles.read(folder.resolve("layout.geojson"));
    assertThat(Handedness.faults(nodes, map)).isEmpty();
    assertThat(Handedness.faults(nodes.stream().map(Node::mirrored).toList(), map)).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("folders")
  void itSaysWhatItIsAndNotWhenItWasMade(Path folder) {
    GlbFile model = model(folder);
    assertThat(model.asset())
        .hasSize(2)
        .containsEntry("version", "2.0")
        .containsEntry("generator", "Plycrag");
    assertThat(model.title()).isNotEmpty().doesNotContain("NOT FOR MAKING");
  }
}
