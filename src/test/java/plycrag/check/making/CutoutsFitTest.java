package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class CutoutsFitTest {
  private static final String WALL =
      """
      [[facet]]
      width = 2400
      length = 2400
      [[cutout]]
      name = "window"
      left = %s
      low = %s
      width = %s
      height = %s
      """;

  @Test
  void passesWhereAnOpeningTouchesTheEdge() {
    Found.by("cutout-place", WALL.formatted(700, 0, 800, 2000)).isNothing();
    Found.by("cutout-place", WALL.formatted(700, 900, 800, 800)).isNothing();
  }

  @Test
  void findsOneThatGoesBeyond() {
    Found.by("cutout-place", WALL.formatted(2000, 900, 800, 800))
        .times(1)
        .isError(true)
        .says("cutout window goes 400 mm beyond facet main")
        .suggests("move it or make it smaller; it may touch the facet's edge");
  }

  @Test
  void findsOneThatCutsTheFacetInTwo() {
    Found.by("cutout-place", WALL.formatted(700, 0, 800, 2400))
        .times(1)
        .says("the cutouts of facet main do not leave it in one part");
  }

  @Test
  void findsOneThatLeavesNothing() {
    Found.by("cutout-place", WALL.formatted(0, 0, 2400, 2400))
        .times(1)
        .says("the cutouts of facet main do not leave it in one part");
  }

  @Test
  void findsTwoThatLieOnEachOther() {
    String two = WALL.formatted(700, 900, 800, 800);
    Found.by(
            "cutout-place",
            two + "[[cutout]]\nname = \"post\"\ncentre = [800, 1000]\ndiameter = 90\n")
        .times(1)
        .says("cutouts window and post lie on each other");
  }
}
