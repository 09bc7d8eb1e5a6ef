package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** A wall that tapers to a narrow upper side, and a roof on it. */
class StandsOnTimberTest {
  private static final String TAPERED =
      """
      [[facet]]
      name = "wall"
      outline = [[0, 0], [2000, 0], [%s, 350], [%s, 350]]
      [[facet]]
      name = "roof"
      angle = 60
      width = 1200
      length = 900
      """;

  /** Mitred timber begins 108 tan 30° = 62 mm below the fold, where the taper is 380 mm broad. */
  @Test
  void passesWhereTimberOfBothMeets() {
    Found.by("facet-stands", TAPERED.formatted("1150", "850")).isNothing();
  }

  @Test
  void findsAFacetThatStandsOnATip() {
    Found.by("facet-stands", TAPERED.formatted("1010", "990"))
        .times(1)
        .isError(true)
        .between("roof", "wall")
        .says("facet roof stands on 20 mm of facet wall, along which no timber of both lies")
        .suggests("let them meet over more ([[facet]] outline, width or shift)");
  }
}
