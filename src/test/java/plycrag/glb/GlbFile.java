package plycrag.glb;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.glb.JsonTree.array;
import static plycrag.glb.JsonTree.object;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Reads a binary glTF 2.0 file by its specification, sharing no code with what writes it: nodes of
 * one scene, each with its mesh or none, its place and its way. What it does not know it refuses.
 */
public final class GlbFile {
  private final Map<String, Object> json;
  private final ByteBuffer numbers;

  private GlbFile(Map<String, Object> json, ByteBuffer numbers) {
    this.json = json;
    this.numbers = numbers;
  }

  /**
   * A node.
   *
   * @param name its name
   * @param kind by its extras
   * @param facet by its extras; empty text if it has none
   * @param at where its own origin is, m
   * @param turn its quaternion, the real part last
   * @param mesh its body; none has no triangles
   */
  public record Node(
      String name, String kind, String facet, Space at, List<Double> turn, Mesh mesh) {
    /** What a way of its own becomes in the scene (v + 2q × (q × v + wv)). */
    public Space turned(Space way) {
      Space q = new Space(turn.get(0), turn.get(1), turn.get(2));
      return way.plus(q.cross(q.cross(way).plus(way.times(turn.get(3)))).times(2));
    }

    /** The same behind a mirror that its x runs into. */
    public Node mirrored() {
      List<Double> turned = List.of(turn.get(0), -turn.get(1), -turn.get(2), turn.get(3));
      return new Node(name, kind, facet, at.mirrored(), turned, mesh.mirrored());
    }
  }

  /** Reads a file. */
  public static GlbFile read(Path file) {
    try {
      return read(Files.readAllBytes(file));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Reads bytes. */
  public static GlbFile read(byte[] bytes) {
    ByteBuffer file = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    byte[] magic = new byte[4];
    file.get(magic);
    assertThat(new String(magic, StandardCharsets.US_ASCII)).isEqualTo("glTF");
    assertThat(file.getInt()).isEqualTo(2);
    assertThat(file.getInt()).isEqualTo(bytes.length);
    byte[] text = chunk(file, "JSON");
    byte[] binary = chunk(file, "BIN\0");
    assertThat(file.remaining()).isZero();
    return new GlbFile(JsonTree.of(text), ByteBuffer.wrap(binary).order(ByteOrder.LITTLE_ENDIAN));
  }

  private static byte[] chunk(ByteBuffer file, String type) {
    byte[] content = new byte[file.getInt()];
    byte[] name = new byte[4];
    file.get(name);
    assertThat(new String(name, StandardCharsets.US_ASCII)).isEqualTo(type);
    file.get(content);
    return content;
  }

  private static int whole(Map<String, Object> object, String key) {
    return ((Double) object.getOrDefault(key, 0.0)).intValue();
  }

  private Map<String, Object> entry(String list, int number) {
    return object(array(json, list).get(number));
  }

  /** The scene's name. */
  public String title() {
    return (String) entry("scenes", whole(json, "scene")).get("name");
  }

  /** What made it. */
  public Map<String, Object> asset() {
    return object(json.get("asset"));
  }

  /** The nodes of the scene. */
  public List<Node> nodes() {
    List<Node> nodes = new ArrayList<>();
    for (Object number : array(entry("scenes", whole(json, "scene")), "nodes")) {
      nodes.add(node(entry("nodes", ((Double) number).intValue())));
    }
    return nodes;
  }

  /** The nodes of some kinds. */
  public List<Node> nodes(String... kinds) {
    return nodes().stream().filter(node -> List.of(kinds).contains(node.kind())).toList();
  }

  private Node node(Map<String, Object> node) {
    assertThat(node)
        .containsOnlyKeys(
            List.of("name", "mesh", "translation", "rotation", "extras").stream()
                .filter(node::containsKey)
                .toList());
    Map<String, Object> extras = object(node.get("extras"));
    Space at = space(array(node, "translation"));
    Mesh mesh = node.containsKey("mesh") ? mesh(whole(node, "mesh")) : new Mesh(List.of());
    assertThat(mesh.triangles().isEmpty() || !node.containsKey("translation")).isTrue();
    List<Double> turn =
        node.containsKey("rotation")
            ? array(node, "rotation").stream().map(Double.class::cast).toList()
            : List.of(0.0, 0.0, 0.0, 1.0);
    return new Node(
        (String) node.get("name"),
        (String) extras.get("kind"),
        (String) extras.getOrDefault("facet", ""),
        at,
        turn,
        mesh);
  }

  private static Space space(List<Object> three) {
    return three.isEmpty()
        ? new Space(0, 0, 0)
        : new Space((Double) three.get(0), (Double) three.get(1), (Double) three.get(2));
  }

  private Mesh mesh(int number) {
    List<Object> primitives = array(entry("meshes", number), "primitives");
    assertThat(primitives).hasSize(1);
    Map<String, Object> primitive = object(primitives.get(0));
    int places = whole(object(primitive.get("attributes")), "POSITION");
    int indices = whole(primitive, "indices");
    assertThat(entry("accessors", places)).containsEntry("componentType", 5126.0);
    assertThat(entry("accessors", indices)).containsEntry("componentType", 5125.0);
    List<Mesh.Triangle> triangles = new ArrayList<>();
    for (int at = 0; at < whole(entry("accessors", indices), "count"); at += 3) {
      triangles.add(
          new Mesh.Triangle(
              corner(places, indices, at),
              corner(places, indices, at + 1),
              corner(places, indices, at + 2)));
    }
    return new Mesh(triangles);
  }

  private Space corner(int places, int indices, int at) {
    int number = numbers.getInt(start(indices) + 4 * at);
    assertThat(number).isBetween(0, whole(entry("accessors", places), "count") - 1);
    int from = start(places) + 12 * number;
    return new Space(
        numbers.getFloat(from), numbers.getFloat(from + 4), numbers.getFloat(from + 8));
  }

  private int start(int accessor) {
    Map<String, Object> found = entry("accessors", accessor);
    return whole(found, "byteOffset")
        + whole(entry("bufferViews", whole(found, "bufferView")), "byteOffset");
  }
}
