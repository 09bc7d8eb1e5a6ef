package plycrag.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;
import plycrag.finding.Severity;

/** Studs of 1110 mm, and plates that may be joined over the stud at 600 mm. */
class MemberWithinStockTest {

  @Test
  void passesWithStockOfTheirLength() {
    Found.by("member-stock", Found.BAY + "[stock]\nlengths = [1110]").isNothing();
  }

  @Test
  void countsTheTrimmedEndsAndWhatCanBeCarried() {
    Found.by("member-stock", Found.BAY + "[stock]\nlengths = [1130]\nend-trim = 10").isNothing();
    Found.by("member-stock", Found.BAY + "[stock]\nlengths = [1130]\nend-trim = 11")
        .times(3)
        .measured(-2, 0);
    Found.by("member-stock", Found.BAY + "[stock]\nlengths = [900, 2400]\ncarry-length = 2399")
        .times(3)
        .measured(-210, 0);
  }

  @Test
  void findsStudsLongerThanStock() {
    Found.by("member-stock", Found.BAY + "[stock]\nlengths = [600, 1000]")
        .times(3)
        .isError(true)
        .at(22.5, 600)
        .between("ST1", "")
        .measured(-110, 0)
        .says("stud ST1 is 1110 mm long, and the longest that a bought stick yields is 1000 mm")
        .suggests(
            "make the facet shorter, state a longer length under [stock], or have long studs"
                + " spliced ([frame] long-studs)");
  }

  @Test
  void passesWithStudsSplicedFromWhatIsSold() {
    Found.by(
            "member-stock",
            Found.BAY + "long-studs = \"spliced\"\n[stock]\nlengths = [600, 1000]\n")
        .isNothing();
  }

  /** Posts under an upper edge at 4 m, of timber that is sold to 3 m; studs are spliced. */
  @Test
  void findsPostsLongerThanStock() {
    String wall =
        """
        [[facet]]
        width = 1200
        length = 4000
        [frame]
        long-studs = "spliced"
        [support]
        kind = "freestanding"
        lateral = "none"
        """;
    Found.by("member-stock", wall).isNothing();
    Found found = Found.by("member-stock", wall + "[stock]\nlengths = [2400, 3000]\n");
    assertThat(found.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.sentence())
                  .matches(
                      "post PO1 is [0-9.]+ mm long, and the longest that a bought stick yields is"
                          + " 3000 mm");
              assertThat(finding.suggestion())
                  .isEqualTo(
                      "hold the wall nearer to it ([support]), or state a longer length under"
                          + " [stock]");
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
            })
        .noneMatch(finding -> finding.sentence().startsWith("stud"));
  }
}
