package plycrag.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plycrag.document.Scene.Kind;
import plycrag.document.Scene.Node;
import plycrag.document.Scene.Spot;

class SceneTest {
  private static final Node NODE =
      new Node("A1", Kind.HARDWARE, Optional.empty(), Spot.plain(new Xyz(0, 0, 0)));

  @Test
  void noTwoPartsHaveOneName() {
    assertThat(new Scene("Bay", List.of(NODE)).nodes()).containsExactly(NODE);
    assertThatThrownBy(() -> new Scene("Bay", List.of(NODE, NODE)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("A1");
  }

  @Test
  void aTriangleHasCornersOfItsBody() {
    List<Xyz> corners = List.of(new Xyz(0, 0, 0), new Xyz(1, 0, 0), new Xyz(0, 1, 0));
    Scene.Triangle whole = new Scene.Triangle(0, 1, 2);
    assertThat(new Scene.Body(corners, List.of(whole)).triangles()).containsExactly(whole);
    for (Scene.Triangle wrong :
        List.of(new Scene.Triangle(0, 1, 3), new Scene.Triangle(-1, 1, 2))) {
      assertThatThrownBy(() -> new Scene.Body(corners, List.of(wrong)))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
