package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Sheets of 2440 by 1220 mm. */
class SheetsSavedTest {
  /**
   * Two facets that turn toward each other by 25°: mitred, the upper sheet's back goes 18 mm times
   * tan 12.5°, which is 3.99 mm, beyond its face.
   */
  private static final String PAIR =
      """
      [wall]
      width = 2440
      [[facet]]
      length = 1000
      [[facet]]
      angle = 25
      length = %s
      """;

  @Test
  void tellsOfASheetThatAFewMillimetresCost() {
    Found.by("sheet-saved", PAIR.formatted("1220"))
        .times(1)
        .isError(false)
        .says("with facet facet 2 4 mm shorter the wall takes 2 sheets instead of 3")
        .suggests("make it 4 mm shorter if you can ([[facet]] length)");
    Found.by("sheet-saved", PAIR.formatted("1216")).isNothing();
  }

  @Test
  void tellsOfNothingThatCostsMoreThanAHundredth() {
    Found.by("sheet-saved", PAIR.formatted("1300")).isNothing();
  }

  @Test
  void tellsOfAWidth() {
    String wide = "[[facet]]\nname = \"main\"\nwidth = 2450\nlength = 1220\n";
    Found.by("sheet-saved", wide)
        .times(1)
        .says("with facet main 10 mm narrower the wall takes 1 sheet instead of 2");
  }

  /** What is left of the lower facet's sheet takes the upper one's, 4 mm longer or not. */
  @Test
  void tellsOfNothingThatIsCutFromALeftover() {
    String narrow = PAIR.replace("width = 2440", "width = 1220").formatted("1220");
    Found.by("sheet-saved", narrow).isNothing();
  }
}
