package plycrag.files.gltf;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import plycrag.document.Scene;
import plycrag.document.Scene.Body;
import plycrag.document.Scene.Kind;
import plycrag.document.Scene.Node;
import plycrag.document.Scene.Spot;
import plycrag.files.gltf.Geometries.Part;
import plycrag.files.json.JsonText;
import plycrag.units.Decimal;

/** The JSON part of a file: what there is, and where among the numbers it stands. */
final class SceneText {
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_INT = 5125;
  private static final int VERTICES = 34962;
  private static final int INDICES = 34963;
  private static final int STRIDE = 12;
  private static final int DECIMALS = 6;
  private static final List<String> UNTURNED = List.of("0", "0", "0", "1");

  private final Scene scene;
  private final Geometries geometries;
  private final List<Kind> materials;

  SceneText(Scene scene, Geometries geometries) {
    this.scene = scene;
    this.geometries = geometries;
    this.materials =
        scene.nodes().stream()
            .filter(node -> node.form() instanceof Body)
            .map(Node::kind)
            .distinct()
            .sorted()
            .toList();
  }

  /** Writes the members of an array. */
  @FunctionalInterface
  private interface Members {
    void write() throws IOException;
  }

  String text() {
    return JsonText.object(
        json -> {
          json.writeObjectFieldStart("asset");
          json.writeStringField("version", "2.0");
          json.writeStringField("generator", "Plycrag");
          json.writeEndObject();
          json.writeNumberField("scene", 0);
          array(json, "scenes", () -> writeScene(json));
          array(json, "nodes", () -> writeNodes(json));
          array(json, "meshes", () -> writeMeshes(json));
          array(json, "materials", () -> writeMaterials(json));
          array(json, "accessors", () -> writeAccessors(json));
          array(json, "bufferViews", () -> writeViews(json));
          array(json, "buffers", () -> writeBuffer(json));
        });
  }

  private static void array(JsonGenerator json, String name, Members members) throws IOException {
    json.writeArrayFieldStart(name);
    members.write();
    json.writeEndArray();
  }

  private void writeScene(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", scene.title());
    json.writeArrayFieldStart("nodes");
    for (int node = 0; node < scene.nodes().size(); node++) {
      json.writeNumber(node);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void writeNodes(JsonGenerator json) throws IOException {
    int meshes = 0;
    for (Node node : scene.nodes()) {
      json.writeStartObject();
      json.writeStringField("name", node.name());
      if (node.form() instanceof Spot spot) {
        writeSpot(json, spot);
      } else {
        json.writeNumberField("mesh", meshes);
        meshes++;
      }
      writeExtras(json, node);
      json.writeEndObject();
    }
  }

  private static void writeSpot(JsonGenerator json, Spot spot) throws IOException {
    numbers(json, "translation", GltfAxes.metres(spot.at()));
    List<String> rotation = texts(GltfAxes.rotation(spot));
    if (!rotation.equals(UNTURNED)) {
      numbers(json, "rotation", rotation);
    }
  }

  private static void writeExtras(JsonGenerator json, Node node) throws IOException {
    json.writeObjectFieldStart("extras");
    json.writeStringField("kind", node.kind().word());
    if (node.facet().isPresent()) {
      json.writeStringField("facet", node.facet().get());
    }
    json.writeEndObject();
  }

  /** The places of mesh n are accessor 2n, its triangles the one after it. */
  private void writeMeshes(JsonGenerator json) throws IOException {
    int accessor = 0;
    for (Node node : scene.nodes()) {
      if (node.form() instanceof Body) {
        json.writeStartObject();
        json.writeArrayFieldStart("primitives");
        json.writeStartObject();
        json.writeObjectFieldStart("attributes");
        json.writeNumberField("POSITION", accessor);
        json.writeEndObject();
        json.writeNumberField("indices", accessor + 1);
        json.writeNumberField("material", materials.indexOf(node.kind()));
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
        accessor += 2;
      }
    }
  }

  private void writeMaterials(JsonGenerator json) throws IOException {
    for (Kind kind : materials) {
      Scene.Colour colour = kind.colour();
      json.writeStartObject();
      json.writeStringField("name", kind.word());
      json.writeObjectFieldStart("pbrMetallicRoughness");
      numbers(
          json,
          "baseColorFactor",
          new double[] {colour.red(), colour.green(), colour.blue(), colour.opacity()});
      json.writeNumberField("metallicFactor", 0);
      json.writeEndObject();
      if (colour.opacity() < 1) {
        json.writeStringField("alphaMode", "BLEND");
      }
      json.writeEndObject();
    }
  }

  private void writeAccessors(JsonGenerator json) throws IOException {
    for (Part part : geometries.parts()) {
      json.writeStartObject();
      writeAccessor(json, 0, part.placesFrom(), FLOAT, part.corners(), "VEC3");
      numbers(json, "min", part.low().stream().mapToDouble(one -> one).toArray());
      numbers(json, "max", part.high().stream().mapToDouble(one -> one).toArray());
      json.writeEndObject();
      json.writeStartObject();
      writeAccessor(json, 1, part.indicesFrom(), UNSIGNED_INT, part.indices(), "SCALAR");
      json.writeEndObject();
    }
  }

  private static void writeAccessor(
      JsonGenerator json, int view, int from, int component, int count, String type)
      throws IOException {
    json.writeNumberField("bufferView", view);
    json.writeNumberField("byteOffset", from);
    json.writeNumberField("componentType", component);
    json.writeNumberField("count", count);
    json.writeStringField("type", type);
  }

  private void writeViews(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeNumberField("buffer", 0);
    json.writeNumberField("byteLength", geometries.placesSize());
    json.writeNumberField("byteStride", STRIDE);
    json.writeNumberField("target", VERTICES);
    json.writeEndObject();
    json.writeStartObject();
    json.writeNumberField("buffer", 0);
    json.writeNumberField("byteOffset", geometries.placesSize());
    json.writeNumberField("byteLength", geometries.cornersSize());
    json.writeNumberField("target", INDICES);
    json.writeEndObject();
  }

  private void writeBuffer(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeNumberField("byteLength", geometries.placesSize() + geometries.cornersSize());
    json.writeEndObject();
  }

  private static void numbers(JsonGenerator json, String name, double[] values) throws IOException {
    numbers(json, name, texts(values));
  }

  private static List<String> texts(double[] values) {
    return Arrays.stream(values).mapToObj(value -> Decimal.of(value, DECIMALS)).toList();
  }

  private static void numbers(JsonGenerator json, String name, List<String> values)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeNumber(value);
    }
    json.writeEndArray();
  }
}
