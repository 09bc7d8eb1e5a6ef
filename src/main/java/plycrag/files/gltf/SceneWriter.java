package plycrag.files.gltf;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import plycrag.document.Scene;
import plycrag.document.Scene.Body;
import plycrag.document.Scene.Node;

/** Writes a scene as a binary glTF 2.0 file (GLB). */
public final class SceneWriter {
  private static final int MAGIC = 0x46546C67;
  private static final int VERSION = 2;
  private static final int JSON = 0x4E4F534A;
  private static final int BINARY = 0x004E4942;
  private static final int HEAD = 12;
  private static final int CHUNK_HEAD = 8;

  private SceneWriter() {}

  /**
   * The bytes of the file.
   *
   * @throws IllegalArgumentException if the scene has no body at all; a defect of its maker
   */
  public static byte[] write(Scene scene) {
    Geometries geometries = new Geometries();
    scene.nodes().stream()
        .map(Node::form)
        .filter(Body.class::isInstance)
        .map(Body.class::cast)
        .forEach(geometries::add);
    if (geometries.parts().isEmpty()) {
      throw new IllegalArgumentException("a scene without a body: " + scene.title());
    }
    byte[] text = new SceneText(scene, geometries).text().getBytes(StandardCharsets.UTF_8);
    return file(padded(text), geometries.bytes());
  }

  /** Spaces follow until four divides the number of bytes. */
  private static byte[] padded(byte[] text) {
    byte[] padded = Arrays.copyOf(text, (text.length + 3) / 4 * 4);
    Arrays.fill(padded, text.length, padded.length, (byte) ' ');
    return padded;
  }

  private static byte[] file(byte[] text, byte[] numbers) {
    int size = HEAD + 2 * CHUNK_HEAD + text.length + numbers.length;
    byte[] bytes = new byte[size];
    ByteBuffer file = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    file.putInt(MAGIC).putInt(VERSION).putInt(size);
    file.putInt(text.length).putInt(JSON).put(text);
    file.putInt(numbers.length).putInt(BINARY).put(numbers);
    return bytes;
  }
}
