package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

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
}
