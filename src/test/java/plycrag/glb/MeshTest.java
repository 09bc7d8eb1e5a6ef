package plycrag.glb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the checks of models would find, on boxes a decimetre wide. */
class MeshTest {
  private static final Mesh BOX = box(0, 0.1);

  private static Mesh box(double from, double to) {
    List<Mesh.Triangle> triangles = new ArrayList<>();
    double[][] faces = {
      {0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}
    };
    for (double[] face : faces) {
      Space[] corners = new Space[4];
      for (int at = 0; at < 4; at++) {
        int bits = (int) face[at];
        corners[at] =
            new Space(
                (bits & 1) == 0 ? from : to,
                (bits & 2) == 0 ? from : to,
                (bits & 4) == 0 ? from : to);
      }
      triangles.add(new Mesh.Triangle(corners[0], corners[1], corners[2]));
      triangles.add(new Mesh.Triangle(corners[0], corners[2], corners[3]));
    }
    return new Mesh(triangles);
  }

  @Test
  void aBoxIsWhatItIs() {
    assertThat(BOX.volume()).isCloseTo(1e-3, within(1e-12));
    assertThat(BOX.isWatertight()).isTrue();
    assertThat(BOX.isConvex()).isTrue();
    assertThat(BOX.mirrored().volume()).isCloseTo(1e-3, within(1e-12));
  }

  @Test
  void aBoxWithoutALidLeaks() {
    assertThat(new Mesh(BOX.triangles().subList(1, 12)).isWatertight()).isFalse();
  }

  @Test
  void aDentedBoxIsNotConvex() {
    List<Mesh.Triangle> dented = new ArrayList<>(BOX.triangles().subList(1, 12));
    Mesh.Triangle lid = BOX.triangles().get(0);
    Space dent = new Space(0.05, 0.05, 0.02);
    dented.add(new Mesh.Triangle(lid.a(), lid.b(), dent));
    dented.add(new Mesh.Triangle(lid.b(), lid.c(), dent));
    dented.add(new Mesh.Triangle(lid.c(), lid.a(), dent));
    assertThat(new Mesh(dented).isWatertight()).isTrue();
    assertThat(new Mesh(dented).isConvex()).isFalse();
  }

  @Test
  void aWayMeetsABoxThatItReaches() {
    Space right = new Space(1, 0, 0);
    assertThat(BOX.isMet(new Space(-0.1, 0.03, 0.05), right, 0.11)).isTrue();
    assertThat(BOX.isMet(new Space(-0.1, 0.03, 0.05), right, 0.09)).isFalse();
    assertThat(BOX.isMet(new Space(-0.1, 0.13, 0.05), right, 1)).isFalse();
    assertThat(BOX.isMet(new Space(0.2, 0.03, 0.05), right, 1)).isFalse();
  }

  @Test
  void whatReachesInIsFoundByItsDepth() {
    assertThat(BOX.holdsDeeply(box(0.0994, 0.2), 0.0005)).isTrue();
    assertThat(BOX.holdsDeeply(box(0.0996, 0.2), 0.0005)).isFalse();
    assertThat(BOX.holdsDeeply(box(0.04, 0.06), 0.0005)).isTrue();
    assertThat(BOX.holdsDeeply(box(-1, 1), 0.0005)).isTrue();
    assertThat(BOX.holdsDeeply(box(0.2, 0.3), 0.0005)).isFalse();
    assertThat(BOX.isFarFrom(box(0.2, 0.3))).isTrue();
    assertThat(BOX.isFarFrom(box(0.05, 0.3))).isFalse();
  }
}
