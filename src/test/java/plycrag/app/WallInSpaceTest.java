package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.TestFiles;
import plycrag.book.WallInSpace;
import plycrag.document.Scene;
import plycrag.document.WallPage;
import plycrag.document.WallPage.Part;
import plycrag.drawing.room.WallModel;

/** Whatever the model of a sample shows, its page tells of. */
class WallInSpaceTest {
  static List<Path> samples() {
    return TestFiles.samples();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyPartOfTheModelComesInAStepAndIsToldOf(Path file) throws Source.SourceException {
    Design.Judged design = (Design.Judged) Inputs.of(new Source(file)).design();
    Bill bill = Bill.of(design);
    WallPage page = WallInSpace.of(design.checked(), bill.figures(), bill.costs());
    Scene scene = WallModel.of(design.checked());
    Set<String> built =
        scene.nodes().stream()
            .filter(node -> node.kind() != Scene.Kind.MAT && node.kind() != Scene.Kind.ROOM)
            .map(Scene.Node::name)
            .collect(Collectors.toSet());
    Map<String, Integer> steps = new HashMap<>();
    for (Part part : page.parts()) {
      assertThat(steps.put(part.mark(), part.step())).as(part.mark() + " is told twice").isNull();
      assertThat(part.what()).isNotBlank();
      assertThat(part.list()).startsWith("lists/");
    }
    assertThat(steps.keySet()).isEqualTo(built);
    assertThat(steps).allSatisfy((mark, step) -> assertThat(step).as(mark).isPositive());
  }
}
