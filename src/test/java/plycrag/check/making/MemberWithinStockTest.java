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
  void findsStudsLongerThanStock() {
    Found.by("member-stock", Found.BAY + "[stock]\nlengths = [600, 1000]")
        .times(3)
        .isError(true)
        .at(22.5, 600)
        .between("ST1", "")
        .measured(-110, 0)
        .says("stud ST1 is 1110 mm long, and the longest length sold is 1000 mm")
        .suggests("make the facet shorter, or state a longer length under [stock]");
  }
}
