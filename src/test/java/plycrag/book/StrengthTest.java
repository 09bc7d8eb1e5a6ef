package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.check.Inspection;
import plycrag.document.Book.Block;
import plycrag.document.Book.Listing;
import plycrag.document.Book.Paragraph;
import plycrag.document.Book.Points;

/** What the book says of strength, and where it says nothing. */
class StrengthTest {
  private static final String WALL =
      """
      [[facet]]
      angle = 15
      width = 1220
      length = 1500
      [inserts]
      pitch-across = 240
      pitch-up = 240
      """;

  private static final String TIED =
      WALL + "[support]\nkind = \"fixed\"\nfixed-to = \"masonry\"\nbehind = 300\n";

  private static List<Block> chapter(String toml) {
    return new Strength(Walls.judged(toml)).blocks();
  }

  private static String words(List<Block> blocks) {
    return blocks.stream()
        .filter(Paragraph.class::isInstance)
        .map(block -> ((Paragraph) block).text())
        .collect(Collectors.joining("\n"));
  }

  @Test
  void theChapterTellsWhatGovernsAndRedoesIt() {
    CheckedLayout wall = Walls.judged(TIED);
    List<Block> blocks = new Strength(wall).blocks();
    assertThat(words(blocks))
        .contains("What governs: ")
        .contains(wall.structure().failing() + " fail, ")
        .contains(wall.structure().unchecked() + " are not checked.")
        .contains("EN 1995-1-1")
        .contains(" = ");
    assertThat(words(blocks).toLowerCase(Locale.ROOT))
        .doesNotContain("safe", "complies", " holds ");
  }

  @Test
  void everyKindOfPartHasOneRowAndAssumptionsAreOneList() {
    List<Block> blocks = chapter(TIED);
    List<Listing> tables =
        blocks.stream().filter(Listing.class::isInstance).map(Listing.class::cast).toList();
    assertThat(tables).hasSize(1);
    assertThat(tables.get(0).table().rows().stream().map(row -> row.get(1).text()))
        .contains("bending", "anchor pulled")
        .doesNotContain("deflection in use");
    assertThat(tables.get(0).table().rows().stream().map(row -> row.get(4).text()))
        .allMatch(part -> part.isEmpty() || Double.parseDouble(part) >= 0.5);
    assertThat(blocks.stream().filter(Points.class::isInstance)).hasSize(1);
  }

  @Test
  void nothingIsSaidWhereNothingIsReckoned() {
    assertThat(chapter(WALL)).isEmpty();
    assertThat(chapter(TIED + "[structure]\nbasis = \"none\"\n")).isEmpty();
    assertThat(chapter(TIED + "[stock]\nenvironment = \"outdoors\"\n")).isEmpty();
  }

  @Test
  void theCoverSaysWhetherItWasReckoned() {
    assertThat(Cautions.notChecked(Inspection.of(Walls.laidOut(TIED))).toString())
        .contains("not judged");
    assertThat(
            Cautions.notChecked(
                Inspection.of(Walls.laidOut(TIED + "[structure]\nbasis = \"none\"\n"))))
        .contains("the strength of the joints between the members of the frame");
  }
}
