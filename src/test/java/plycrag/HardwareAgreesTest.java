package plycrag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.check.CheckedLayout;
import plycrag.drawing.room.WallModel;
import plycrag.files.csv.CsvWriter;
import plycrag.files.gltf.SceneWriter;
import plycrag.glb.GlbFile;
import plycrag.glb.GlbFile.Node;
import plycrag.glb.Space;
import plycrag.prices.PriceList;
import plycrag.stock.CutList;
import plycrag.stock.HardwareList;
import plycrag.stock.ShoppingList;

/**
 * The hardware of every sample, from the texts of its model and its lists alone: nothing shares
 * room, and every bolt goes through what its row says.
 */
class HardwareAgreesTest {
  /** What may be shared of depth, m. */
  private static final double SHARED = 0.0005;

  private static final double MILLIMETRE = 0.001;

  static List<Path> samples() {
    return TestFiles.samples();
  }

  private static GlbFile model(Path sample) {
    return GlbFile.read(SceneWriter.write(WallModel.of(Walls.judged(sample))));
  }

  private static List<CSVRecord> rows(String text) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      return parser.getRecords();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static List<CSVRecord> hardware(Path sample) {
    return rows(CsvWriter.write(HardwareList.of(Walls.judged(sample))));
  }

  private static Set<String> words(CSVRecord row, String column) {
    return Stream.of(row.get(column).split(" "))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void noTwoPiecesShareRoom(Path sample) {
    List<Node> pieces =
        model(sample).nodes("hardware").stream()
            .filter(node -> !node.mesh().triangles().isEmpty())
            .toList();
    assertThat(pieces).isNotEmpty().allMatch(node -> node.mesh().isWatertight());
    List<String> meeting = new ArrayList<>();
    for (int at = 0; at < pieces.size(); at++) {
      for (Node other : pieces.subList(0, at)) {
        if (!pieces.get(at).mesh().isFarFrom(other.mesh())
            && pieces.get(at).mesh().shares(other.mesh(), SHARED)) {
          meeting.add(other.name() + " and " + pieces.get(at).name());
        }
      }
    }
    assertThat(meeting).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyRowStandsInTheModel(Path sample) {
    assertThat(hardware(sample).stream().map(row -> row.get("mark")))
        .doesNotHaveDuplicates()
        .containsExactlyElementsOf(
            model(sample).nodes("hardware").stream().map(Node::name).toList());
  }

  /** A bolt goes through all members of its row, a screw ends in the last, and nothing else. */
  @ParameterizedTest
  @MethodSource("samples")
  void boltsGoThroughWhatTheirRowsName(Path sample) {
    GlbFile model = model(sample);
    List<Node> timber = model.nodes("member", "support");
    for (CSVRecord row : hardware(sample)) {
      if (row.get("article").matches("(bolt|structural screw|anchor).*")) {
        Space from = place(row, "x_mm", "y_mm", "z_mm", MILLIMETRE);
        Space way = place(row, "dx", "dy", "dz", 1);
        assertThat(way.length()).isCloseTo(1, within(1e-5));
        boolean isSunk = row.get("article").startsWith("structural screw");
        Space start = isSunk ? from.plus(way.times(MILLIMETRE)) : from.minus(way.times(MILLIMETRE));
        // one whose head is sunk begins in the timber, so that it is met where it leaves that
        double beyond = row.get("article").contains("sunk") ? MILLIMETRE : -MILLIMETRE / 2;
        double length = reach(node(model, row.get("mark")), from, way) + beyond;
        Set<String> met =
            timber.stream()
                .filter(member -> member.mesh().isMet(start, way, length + MILLIMETRE))
                .map(Node::name)
                .collect(Collectors.toSet());
        assertThat(met).as(row.get("mark")).isEqualTo(words(row, "members"));
      }
    }
  }

  private static Node node(GlbFile model, String mark) {
    return model.nodes("hardware").stream()
        .filter(node -> node.name().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  /** In the room's axes; the model's are (x, z, y). */
  private static Space place(CSVRecord row, String x, String y, String z, double unit) {
    return new Space(number(row, x), number(row, z), number(row, y)).times(unit);
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static double reach(Node node, Space from, Space way) {
    return node.mesh()
        .corners()
        .mapToDouble(corner -> corner.minus(from).dot(way))
        .max()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyMemberNamedIsCut(Path sample) {
    CheckedLayout checked = Walls.judged(sample);
    Set<String> cut = new HashSet<>();
    rows(CsvWriter.write(CutList.of(checked).table("C24")))
        .forEach(row -> cut.addAll(words(row, "mark")));
    for (CSVRecord row : hardware(sample)) {
      assertThat(cut).as(row.get("mark")).containsAll(words(row, "members"));
    }
  }

  /** As many of each article as are bought; joints that nothing holds have none to place. */
  @ParameterizedTest
  @MethodSource("samples")
  void asManyAreBoughtAsArePlaced(Path sample) {
    CheckedLayout checked = Walls.judged(sample);
    ShoppingList shopping =
        ShoppingList.of(
            checked,
            Walls.sticks(sample),
            Walls.parameters(TestFiles.read(sample)).buying(),
            PriceList.empty());
    Map<String, Integer> bought = new TreeMap<>();
    for (CSVRecord row : rows(CsvWriter.write(shopping.table()))) {
      if (row.get("group").equals("hardware")) {
        String size = row.get("size").replaceAll("(^|, )[0-9]+ screws of .*", "");
        String article = row.get("article") + (size.isEmpty() ? "" : ", " + size);
        bought.merge(article, Integer.parseInt(row.get("quantity")), Integer::sum);
      }
    }
    Map<String, Integer> placed = new TreeMap<>();
    hardware(sample).stream()
        .filter(row -> !row.get("article").startsWith("gusset"))
        .forEach(row -> placed.merge(row.get("article"), 1, Integer::sum));
    assertThat(bought).containsAllEntriesOf(placed);
  }
}
