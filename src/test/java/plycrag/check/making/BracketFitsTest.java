package plycrag.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Six ends of studs of 45 by 90 on plates. */
class BracketFitsTest {

  @Test
  void passesWhatTheCatalogueHas() {
    Found.by("bracket-fits", Found.BAY).isNothing();
    Found.by("bracket-fits", Found.BAY + "[joints]\nbracket-screws = 12\n").isNothing();
  }

  /**
   * Seven screws a leg: four rows of the broadest, whose two lines leave 30 of 35 at the sides. At
   * the top gussets hold the studs; below, where the plywood would reach 7 d under its screws, into
   * the floor, screws go through the plate into the studs' ends.
   */
  @Test
  void passesWhatAGussetOrAPlateHolds() {
    Found.by("bracket-fits", Found.BAY + "[joints]\nbracket-screws = 14\n").isNothing();
  }

  /**
   * Trimmers of 68 mm beside a round opening: the second screws would lie 34 + 13 from the bend, of
   * which 12 d from the other end leave none; nor does a gusset keep 12 d = 48 of both ends. Into
   * two of the four ends screws find room through the headers.
   */
  @Test
  void saysWhatWouldDo() {
    String opening = "[[cutout]]\nname = \"socket\"\ncentre = [900, 600]\ndiameter = 68\n";
    Found.by("bracket-fits", Found.BAY + opening)
        .times(1)
        .isError(false)
        .says(
            "the catalogue has no bracket or strap for TR1 and HD2 and at 1 more joint (end on side)")
        .suggests(
            "one at most 90 mm wide, with legs of at most 68 mm and holes for screws of 4.8 mm from"
                + " 34 mm on would take 4 of the 8 screws; ask for fewer ([joints] bracket-screws)"
                + " or choose broader timber");
  }

  /** A brace meets its tie at 55.7°, between inserts that leave plywood no room. */
  @Test
  void saysWhatToDoInASharpCorner() {
    String leaning =
        """
        [wall]
        width = 2440
        raise = 310
        [[facet]]
        angle = 25
        length = 2440
        [support]
        kind = "freestanding"
        """;
    assertThat(Found.by("bracket-fits", leaning).findings())
        .anySatisfy(
            one -> {
              assertThat(one.sentence())
                  .startsWith("the catalogue has no bracket or strap for BC2 and TI2 and at");
              assertThat(one.suggestion())
                  .isEqualTo(
                      "their faces close to 55.7°, too sharp for a bracket, and no gusset finds"
                          + " room; fill the corner with a wedge of timber cut to that angle, and"
                          + " drive bolts or long screws through both and the wedge");
            });
  }

  /** Cut square, sheets that turn away from each other keep the timber behind them apart. */
  @Test
  void saysWhatToDoAtASquareFold() {
    String square =
        """
        [wall]
        fold-edges = "square"
        width = 1200
        [[facet]]
        angle = 20
        length = 1000
        [[facet]]
        angle = 0
        length = 1000
        """;
    Found.by("bracket-fits", square)
        .times(1)
        .says("the catalogue has no bracket for PL2 and PL3 (edge to edge at the fold)")
        .suggests(
            "mitre what meets at the fold ([wall] fold-edges), so that bolts go through both; or fill"
                + " the gap with a wedge of timber cut to it, and bolt through both and the wedge");
    Found.by("bracket-fits", square.replace("square", "mitred")).isNothing();
  }

  /** A corner of 90° is mitred by default, and timber is not ripped that far. */
  @Test
  void doesNotAskForAMitreThatIsThere() {
    String corner =
        """
        [[facet]]
        name = "one"
        width = 1200
        length = 1200
        [[facet]]
        name = "two"
        beside = "one"
        turn = %s
        width = 1200
        length = 1200
        [frame]
        section = [90, 45]
        """;
    Found.by("bracket-fits", corner.formatted("90"))
        .suggests(
            "let facets one and two turn toward each other by at most 60° (it is 90°), where mitred"
                + " timber lies back to back and takes bolts; or fill the gap with a wedge of timber"
                + " cut to it, and bolt through both and the wedge");
    assertThat(Found.by("bracket-fits", corner.formatted("60")).findings())
        .noneMatch(finding -> finding.sentence().contains("at the fold"));
  }

  /** 6 × 3 mm = 18 deep and 5 before the far side are more than 20. */
  @Test
  void saysWhereTimberIsTooNarrow() {
    Found.by("bracket-fits", Found.SEAMED + "section = [20, 60]\n")
        .suggests(
            "no screw of 3 mm or thicker keeps its distances there and stays inside, and no gusset"
                + " finds room; choose broader timber");
  }
}
