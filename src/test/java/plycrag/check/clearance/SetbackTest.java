package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** The setback of 100 mm from the outline. */
class SetbackTest {

  @Test
  void passesOnTheSetback() {
    Found.by("setback", Found.bay("100, 1100", "100, 1100")).isNothing();
  }

  @Test
  void findsAnInsertInsideIt() {
    Found.by("setback", Found.bay("60", "300"))
        .times(1)
        .isError(true)
        .at(60, 300)
        .between("main 6/30", "main")
        .measured(60, 100)
        .says("insert main 6/30 stands 60 mm inside the facet's outline; 100 mm must remain")
        .suggests("move it inward by 40 mm, or make the setback smaller");
  }
}
