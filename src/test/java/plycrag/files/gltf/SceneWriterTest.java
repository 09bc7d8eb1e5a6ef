package plycrag.files.gltf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.document.Scene;
import plycrag.document.Scene.Body;
import plycrag.document.Scene.Kind;
import plycrag.document.Scene.Node;
import plycrag.document.Scene.Spot;
import plycrag.document.Scene.Triangle;
import plycrag.document.Xyz;
import plycrag.glb.GlbFile;
import plycrag.glb.Space;

class SceneWriterTest {
  /** A corner of a box 1 m wide to the right, 2 m deep to the climber, 3 m high. */
  private static final Body WEDGE =
      new Body(
          List.of(
              new Xyz(0, 0, 0), new Xyz(1000, 0, 0), new Xyz(0, 2000, 0), new Xyz(0, 0, 3000.0004)),
          List.of(
              new Triangle(0, 1, 2),
              new Triangle(0, 3, 1),
              new Triangle(0, 2, 3),
              new Triangle(1, 3, 2)));

  private static Scene scene(Node... more) {
    List<Node> nodes = new ArrayList<>();
    nodes.add(new Node("P1", Kind.PIECE, Optional.of("main"), WEDGE));
    nodes.addAll(List.of(more));
    return new Scene("Bay", nodes);
  }

  private static Node insert(Xyz right, Xyz up) {
    Spot spot = new Spot(new Xyz(-10, 20, 30.5), right, up);
    return new Node("main 1/2", Kind.INSERT, Optional.of("main"), spot);
  }

  @Test
  void theTextIsGrammarAlone() {
    byte[] bytes = SceneWriter.write(scene(insert(new Xyz(1, 0, 0), new Xyz(0, 0, 1))));
    int length = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(12);
    String text = new String(bytes, 20, length, StandardCharsets.UTF_8);
    assertThat(text.strip())
        .isEqualTo(
            """
            {"asset":{"version":"2.0","generator":"Plycrag"},"scene":0,\
            "scenes":[{"name":"Bay","nodes":[0,1]}],\
            "nodes":[{"name":"P1","mesh":0,"extras":{"kind":"piece","facet":"main"}},\
            {"name":"main 1/2","translation":[-0.01,0.0305,0.02],\
            "extras":{"kind":"insert","facet":"main"}}],\
            "meshes":[{"primitives":[{"attributes":{"POSITION":0},"indices":1,"material":0}]}],\
            "materials":[{"name":"piece","pbrMetallicRoughness":\
            {"baseColorFactor":[0.72,0.52,0.3,1],"metallicFactor":0}}],\
            "accessors":[{"bufferView":0,"byteOffset":0,"componentType":5126,"count":4,\
            "type":"VEC3","min":[0,0,0],"max":[1,3,2]},\
            {"bufferView":1,"byteOffset":0,"componentType":5125,"count":12,"type":"SCALAR"}],\
            "bufferViews":[{"buffer":0,"byteLength":48,"byteStride":12,"target":34962},\
            {"buffer":0,"byteOffset":48,"byteLength":48,"target":34963}],\
            "buffers":[{"byteLength":96}]}""");
  }

  @Test
  void anotherReaderFindsTheSameParts() {
    GlbFile file =
        GlbFile.read(SceneWriter.write(scene(insert(new Xyz(1, 0, 0), new Xyz(0, 0, 1)))));
    assertThat(file.title()).isEqualTo("Bay");
    GlbFile.Node wedge = file.nodes().get(0);
    assertThat(wedge.mesh().isWatertight()).isTrue();
    assertThat(wedge.mesh().volume()).isCloseTo(1.0, within(1e-6));
    assertThat(wedge.mesh().corners().mapToDouble(Space::y).max()).hasValue(3);
    GlbFile.Node insert = file.nodes("insert").get(0);
    assertThat(insert.at()).isEqualTo(new Space(-0.01, 0.0305, 0.02));
    assertThat(insert.turn()).containsExactly(0.0, 0.0, 0.0, 1.0);
  }

  /**
   * A facet of a run that is turned by a heading and leans toward its climber: its right and upward
   * ways in the room's axes, and what a glTF reader makes of the quaternion.
   */
  @ParameterizedTest
  @CsvSource({"0,0", "0,30", "0,-12", "90,0", "-75,40", "180,20", "180,0", "-180,60", "135,89"})
  void aSpotFacesAsItIsTold(double heading, double lean) {
    double h = Math.toRadians(heading);
    double l = Math.toRadians(lean);
    Xyz right = new Xyz(Math.cos(h), Math.sin(h), 0);
    Xyz up = new Xyz(-Math.sin(h) * Math.sin(l), Math.cos(h) * Math.sin(l), Math.cos(l));
    Space out = new Space(-Math.sin(h) * Math.cos(l), -Math.sin(l), Math.cos(h) * Math.cos(l));
    GlbFile.Node node =
        GlbFile.read(SceneWriter.write(scene(insert(right, up)))).nodes("insert").get(0);
    close(node.turned(new Space(1, 0, 0)), new Space(right.x(), right.z(), right.y()));
    close(node.turned(new Space(0, 1, 0)), new Space(up.x(), up.z(), up.y()));
    close(node.turned(new Space(0, 0, 1)), out);
    assertThat(node.turn().get(3)).isNotNegative();
    assertThat(node.turn().stream().mapToDouble(part -> part * part).sum())
        .isCloseTo(1, within(5e-6));
  }

  private static void close(Space found, Space asked) {
    assertThat(found.minus(asked).length()).isLessThan(5e-6);
  }

  @Test
  void aSceneWithoutABodyIsRefused() {
    Scene empty = new Scene("Bay", List.of(insert(new Xyz(1, 0, 0), new Xyz(0, 0, 1))));
    assertThatThrownBy(() -> SceneWriter.write(empty))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Bay");
  }
}
