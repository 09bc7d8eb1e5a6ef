package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Plates of 95 by 200 between two folds that close by 50° each; 218 tan 25° = 102 at each end. */
class RoomForStudsTest {
  private static final String BEND =
      """
      [[facet]]
      angle = 85
      [[facet]]
      name = "bend"
      angle = 35
      length = %s
      [[facet]]
      angle = -15
      [frame]
      section = [95, 200]
      """;

  @Test
  void passesWhereStudsFit() {
    Found.by("facet-too-short", BEND.formatted("600")).isNothing();
  }

  @Test
  void namesTheKeyThatTellsHowLongAFacetIs() {
    Found.by("facet-too-short", BEND.formatted("247").replace("length", "vertical-height"))
        .times(1)
        .suggests(
            "make it longer ([[facet]] vertical-height), its folds less sharp ([[facet]] angle)"
                + " or the timber less deep ([frame] section)");
  }

  /** Beside a roof just above the floor a plumb wall of any length is a strip. */
  @Test
  void aFacetThatTheWallBesideItCutsOffIsNotToldToBeLonger() {
    Found.by(
            "facet-too-short",
            """
            [[facet]]
            name = "roof"
            angle = 89
            length = 487
            [[facet]]
            name = "wall"
            beside = "roof"
            turn = 5
            """)
        .times(1)
        .suggests(
            "let the walls lean more alike or turn less toward each other ([[facet]] angle, turn)");
  }

  @Test
  void findsAFacetThatIsAllPlates() {
    Found.by("facet-too-short", BEND.formatted("300"))
        .times(1)
        .isError(true)
        .between("bend", "")
        .says(
            "facet bend is 300 mm long, and the plates at its edges leave no room for studs"
                + " between them")
        .suggests(
            "make it longer ([[facet]] length), its folds less sharp ([[facet]] angle) "
                + "or the timber less deep ([frame] section)");
  }
}
