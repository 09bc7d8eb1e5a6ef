package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Listing;
import plycrag.document.Book.Paragraph;
import plycrag.document.Cell;
import plycrag.prices.PriceList;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;

/**
 * The whole book of a kick of 600 and a facet of 1500 that leans out 30°, on rails of 140 between
 * mats as thick, with two posts 600 behind.
 */
class StandingBookTest {
  private static final String TEXT =
      """
      [wall]
      width = 1200
      raise = 140
      [[facet]]
      name = "kick"
      angle = 0
      length = 600
      [[facet]]
      name = "main"
      angle = 30
      length = 1500
      [frame]
      section = [45, 90]
      stud-spacing = 600
      [support]
      kind = "freestanding"
      behind = 600
      [inserts]
      pattern = "lines"
      columns = [590]
      rows = [150]
      when-blocked = "nudge"
      [mat]
      thickness = 140
      """;

  private List<Block> made;

  @BeforeEach
  void makeTheBook() {
    made = blocks(TEXT);
  }

  private static List<Block> blocks(String toml) {
    CheckedLayout wall = Walls.judged(toml);
    StickPlan plan = StickPlan.of(wall, PriceList.empty());
    ShoppingList list =
        ShoppingList.of(wall, plan, Walls.parameters(toml).buying(), PriceList.empty());
    return BuildBook.of(wall, plan, list, Walls.portfolio(wall)).sections().stream()
        .flatMap(section -> section.blocks().stream())
        .toList();
  }

  private static List<String> words(List<Block> blocks) {
    return blocks.stream()
        .filter(Paragraph.class::isInstance)
        .map(block -> ((Paragraph) block).text())
        .toList();
  }

  private List<String> rows(String title) {
    return made.stream()
        .filter(Listing.class::isInstance)
        .map(block -> ((Listing) block).table())
        .filter(table -> table.title().startsWith(title))
        .flatMap(table -> table.rows().stream())
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  /**
   * 140 and 600, and 1500 · cos 30° = 1299.04. Ten members of the frame; a rail, a post, a heel, a
   * tie and a brace at either station, and a beam, a sill and a brace along the wall.
   */
  @Test
  void theWallIsToldInNumbers() {
    assertThat(words(made))
        .contains(
            "Facet kick: 1200 mm wide, 600 mm up the slope, vertical, its lower edge 140 mm and its"
                + " upper edge 740 mm above the floor.",
            "Facet main: 1200 mm wide, 1500 mm up the slope, leaning out 30° from vertical, its lower"
                + " edge 740 mm and its upper edge 2039 mm above the floor.");
  }

  /** 18, 45 and 90 times tan 15° = 0.26795 are 4.82, 12.06 and 24.12. */
  @Test
  void cutsAreToldToTheTenth() {
    assertThat(rows("Saw list"))
        .containsExactly(
            "P1|upper edge|15°|back by 4.8 mm",
            "PL2|rip along the sheet|15°|upper face by 12.1 mm",
            "ST1 ST2 ST3|upper end|15°|back by 24.1 mm",
            "P2|lower edge|15°|back by 4.8 mm",
            "PL3|rip along the sheet|15°|lower face by 12.1 mm",
            "ST4 ST5 ST6|lower end|15°|back by 24.1 mm");
    // 600 + 4.82 and 1500 + 4.82 with the slanting edge
    assertThat(rows("Pieces"))
        .containsExactly("P1|S1|kick|1200 x 604.8 mm", "P2|S2|main|1200 x 1504.8 mm");
    // a tie meets a back at 30° from plumb, 165 + 45 below its upper end at 750 - 108 · cos 30° =
    // 656.5: from the posts' backs at -798 to 656.5 - 210 · sin 30° and 45 · tan 30° = 26 more
    assertThat(rows("Cut list"))
        .contains(
            "HE1 HE2|heel|45x90|2|420 mm|square",
            "ST1 ST2 ST3|stud|45x90|3|537.4 mm|0°, 15°",
            "TI1 TI2|tie|45x90|2|1375.4 mm|0°, 0° / 30° mitre");
  }

  @Test
  void jointsAreToldOnceForAllThatAreAlike() {
    assertThat(rows("Joints of the frame"))
        .contains(
            "across the fold|PL2–PL3|3 × bolt",
            "end on side|ST1–PL2, ST3–PL2|1 × bracket 60 x 60 x 40 x 2 mm, 8 screws of 4.5 x 30 mm",
            "side by side|BM1–PO1, BM1–PO2, SL1–PO1, SL1–PO2, BC3–PO1, BC3–PO2|2 × screw");
    assertThat(rows("Joints of the frame"))
        .anyMatch(row -> row.contains("TI1–ST4") && row.endsWith("|gussets of plywood, as below"));
    assertThat(rows("Gussets").get(0))
        .startsWith("GU1, GU11|PO1+RA1+BC1, PO2+RA2+BC2|")
        .endsWith("|12 of 5 x 50 mm|an offcut of S1");
    assertThat(rows("Screws and bolts"))
        .contains("PL2|PL3|140 / 45, 562 / 45, 1060 / 45 mm|the sheets")
        .anyMatch(row -> row.startsWith("BC3|PO1|") && row.endsWith("|its lower or left side"));
  }

  /**
   * A rail of 140 under a frame that is not raised: four overlaps, told once, brackets in the rails
   * and the facet itself. Numbers are those of the drawings.
   */
  @Test
  void findingsAreNumbered() {
    made = blocks(TEXT.replace("raise = 140\n", ""));
    List<String> findings = rows("Findings");
    assertThat(findings.get(0))
        .startsWith(
            "1|error|kick|PL1 overlaps RA1 by 45 mm (4 times: PL1, ST1, ST3).|Raise the wall");
    assertThat(findings)
        .contains(
            "3|error||Facet kick stands on the rails under the posts, and would stand 140 mm deep in"
                + " them.|Let the wall begin at least 140 mm above the floor ([wall] raise = 140).");
    assertThat(words(made))
        .anyMatch(text -> text.startsWith("6 findings forbid making this wall."));
    assertThat(rows("What was checked"))
        .anyMatch(row -> row.startsWith("members-overlap|") && row.endsWith("|4"))
        .anyMatch(row -> row.startsWith("insert-edge|") && row.endsWith("|0"));
  }

  /** On an even floor nothing falls; 12 mm fall to the right, -12 to the left. */
  @Test
  void railsArePackedWhereTheFloorFalls() {
    assertThat(words(made))
        .contains(
            "Set the base rails level and pack them solid along their length; pad what of them lies"
                + " under the mats.");
    assertThat(words(blocks(TEXT + "[room]\nfloor-fall = 12\n")))
        .anyMatch(text -> text.contains(": the floor falls by 12 mm to the right end."));
    assertThat(words(blocks(TEXT + "[room]\nfloor-fall = -12\n")))
        .anyMatch(text -> text.contains(": the floor falls by 12 mm to the left end."));
    assertThat(words(blocks(TEXT + "[room]\nfloor-fall = 12\nfloor-pitch = -1.5\n")))
        .anyMatch(
            text ->
                text.contains(
                    ": the floor falls by 12 mm to the right end and falls by 1.5° toward the"
                        + " climber."));
  }

  @Test
  void theBookTellsWhatKeepsItFromSwaying() {
    assertThat(words(made))
        .contains(
            "Along the wall the braces on the backs of the posts keep it from swaying; toward it and"
                + " away from it those from the feet of the posts do. Keep it propped until all of them"
                + " are fixed.");
  }

  /** A flange of 13 and 4 to timber: 577.5 - 17 = 560.5 is 29.5 from 590; the grid's 560 is 30. */
  @Test
  void theSetOutIsToldFacetByFacet() {
    assertThat(SettingOut.of(Walls.laidOut(TEXT)))
        .hasSize(2)
        .allSatisfy(
            told -> {
              assertThat(told.summary())
                  .isEqualTo(
                      "1 insert asked for, in 1 column and 1 row. Had nothing been moved, 1 insert"
                          + " would have had something in the way. None is lost.");
              assertThat(told.lines())
                  .containsExactly(
                      "Column 1, asked for at 590 mm, is set at 560 mm, 30 mm to the left. In its way:"
                          + " the stud at 600 mm (29.5 mm short).");
            });
  }
}
