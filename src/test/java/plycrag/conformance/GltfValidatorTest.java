package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.TestFiles;
import plycrag.glb.JsonTree;

/** The model of every sample against Khronos' own validator, in Node. */
@Tag("conformance")
class GltfValidatorTest {
  /** Where {@code .ci/run} puts it. */
  private static final String MODULES = Path.of("target/npm").toAbsolutePath() + "/";

  private static final String SCRIPT =
      """
      const [, , modules, file] = process.argv;
      const bytes = new Uint8Array(require("fs").readFileSync(file));
      require("module").createRequire(modules)("gltf-validator")
        .validateBytes(bytes, { maxIssues: 0 })
        .then(report => console.log(JSON.stringify(report.issues)))
        .catch(failed => { console.error(failed); process.exit(1); });
      """;

  @TempDir private Path scratch;

  static List<Path> models() {
    return TestFiles.list(Path.of("out-samples"), "model.glb");
  }

  @ParameterizedTest
  @MethodSource("models")
  void findsNeitherErrorNorWarning(Path model) {
    assertThat(issues(model)).containsEntry("numErrors", 0.0).containsEntry("numWarnings", 0.0);
  }

  /** A model whose triangles name a corner too many is none. */
  @Test
  void findsWhatIsWrong() throws IOException {
    byte[] bytes = Files.readAllBytes(models().get(0));
    bytes[bytes.length - 4] = 127;
    Path broken = Files.write(scratch.resolve("broken.glb"), bytes);
    assertThat((Double) issues(broken).get("numErrors")).isPositive();
  }

  @Test
  void everySampleHasOne() {
    assertThat(models()).hasSameSizeAs(TestFiles.samples()).isNotEmpty();
  }

  private Map<String, Object> issues(Path model) {
    Path script = Tools.write(scratch.resolve("validate.cjs"), SCRIPT);
    String file = model.toAbsolutePath().toString();
    String report = Tools.output("node", script.toString(), MODULES, file);
    return JsonTree.of(TestFiles.bytes(report));
  }
}
