package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** A wall of 1200 mm with a setback that leaves room and one that does not. */
class InsertsFitTest {

  @Test
  void passesWithRoom() {
    Found.by("no-inserts", Found.BAY + "[inserts]\nsetback = 600").isNothing();
  }

  @Test
  void warnsOfAWallWithoutInserts() {
    Found.by("no-inserts", Found.BAY + "[inserts]\nsetback = 601")
        .times(1)
        .isError(false)
        .between("main", "")
        .says("no insert fits on facet main")
        .suggests("make the setback or the pitch smaller");
  }
}
