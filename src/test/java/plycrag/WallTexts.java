package plycrag;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Parameter files at random, lengths in tenths of a millimetre so that nothing lies on a grid. */
public final class WallTexts {
  private WallTexts() {}

  /** Anything that the parameters allow, within a few metres. */
  public static Arbitrary<String> any() {
    return walls(sheets(300, 50), frames(100, 240, 100));
  }

  /**
   * Walls whose timber has room: pieces of 200 mm or more, timber up to 60 by 140, no studs
   * crowded.
   */
  public static Arbitrary<String> roomy() {
    return walls(sheets(412, 200), frames(60, 140, 210));
  }

  private static Arbitrary<String> walls(Arbitrary<String> sheets, Arbitrary<String> frames) {
    return Combinators.combine(facets(), sheets, frames, inserts())
        .as((facet, sheet, frame, inserts) -> facet + sheet + frame + inserts);
  }

  private static Arbitrary<String> facets() {
    return Combinators.combine(tenths(0, 400), whole(-15, 60), tenths(400, 6000), tenths(400, 6000))
        .as("[wall]\nraise = %s\n[[facet]]\nangle = %s\nwidth = %s\nlength = %s\n"::formatted);
  }

  private static Arbitrary<String> sheets(int least, int leastWidth) {
    String sizes = "[sheet]\nwidth = %s\nlength = %s\nseam-gap = %s\nleast-width = %s\n%s";
    Arbitrary<String> lay = Arbitraries.of("", "lay = \"across\"\n", "lay = \"up\"\n");
    return Combinators.combine(whole(least, 1600), whole(1600, 3100), tenths(0, 10), lay)
        .as((width, length, gap, way) -> sizes.formatted(width, length, gap, leastWidth, way));
  }

  private static Arbitrary<String> frames(int breadth, int depth, int leastSpacing) {
    return Combinators.combine(
            whole(15, breadth),
            whole(60, depth),
            whole(leastSpacing, 1200),
            Arbitraries.of("doubled", "flat", "shared"))
        .as("[frame]\nsection = [%s, %s]\nstud-spacing = %s\nseams = \"%s\"\n"::formatted);
  }

  private static Arbitrary<String> inserts() {
    String inserts =
        """
        [inserts]
        pattern = "%s"
        pitch-across = %s
        setback = %s
        [screws]
        edge-spacing = %s
        field-spacing = %s
        """;
    return Combinators.combine(
            Arbitraries.of("grid", "offset"),
            tenths(90, 300),
            tenths(0, 150),
            whole(80, 400),
            whole(80, 600))
        .as(inserts::formatted);
  }

  private static Arbitrary<String> whole(int least, int most) {
    return Arbitraries.integers().between(least, most).map(String::valueOf);
  }

  private static Arbitrary<String> tenths(int least, int most) {
    return Arbitraries.integers()
        .between(least * 10, most * 10)
        .map(tenth -> tenth / 10 + "." + tenth % 10);
  }
}
