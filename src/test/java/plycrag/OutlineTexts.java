package plycrag;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Parameter files at random with one facet that is no rectangle, and openings clear of seams. */
public final class OutlineTexts {
  private static final int SHEET = 1000;

  private OutlineTexts() {}

  /** Trapezoids, triangles, gables and steps, sheets a metre wide laid up, some with an opening. */
  public static Arbitrary<String> any() {
    return Combinators.combine(outlines(), angles(), frames(), openings())
        .as(
            (outline, angle, frame, opening) ->
                "[wall]\nraise = 400\n[[facet]]\nangle = "
                    + angle
                    + "\noutline = "
                    + outline
                    + "\n"
                    + opening
                    + "[sheet]\nlay = \"up\"\nwidth = "
                    + SHEET
                    + "\nlength = 2400\nleast-width = 50\nstart = \"lower-left\"\n"
                    + frame
                    + "[inserts]\nwhen-blocked = \"drop\"\n");
  }

  private static Arbitrary<Integer> angles() {
    return Arbitraries.integers().between(-10, 50);
  }

  private static Arbitrary<String> frames() {
    return Combinators.combine(
            Arbitraries.integers().between(38, 50), Arbitraries.integers().between(350, 700))
        .as("[frame]\nsection = [%s, 90]\nstud-spacing = %s\n"::formatted);
  }

  private static Arbitrary<String> outlines() {
    Arbitrary<Integer> low = Arbitraries.integers().between(700, 1200);
    Arbitrary<Integer> high = Arbitraries.integers().between(1500, 2350);
    Arbitrary<Integer> in = Arbitraries.integers().between(100, 800);
    return Combinators.combine(low, high, in, in, Arbitraries.integers().between(0, 4))
        .as(OutlineTexts::outline);
  }

  private static String outline(int low, int high, int left, int right, int kind) {
    int width = 3 * SHEET - 300;
    String foot = "[0, 0], [" + width + ", 0]";
    return switch (kind) {
      case 0 ->
          "[" + foot + ", [" + (width - right) + ", " + high + "], [" + left + ", " + high + "]]";
      case 1 -> "[" + foot + ", [" + (left + 500) + ", " + high + "]]";
      case 2 ->
          "["
              + foot
              + ", ["
              + width
              + ", "
              + low
              + "], ["
              + (left + 600)
              + ", "
              + high
              + "], [0, "
              + (low + 100)
              + "]]";
      case 3 ->
          "["
              + foot
              + ", ["
              + width
              + ", "
              + low
              + "], ["
              + (left / 4 + 2150)
              + ", "
              + low
              + "], ["
              + (left / 4 + 2150)
              + ", "
              + high
              + "], [0, "
              + high
              + "]]";
      default -> "[" + foot + ", [" + width + ", " + low + "], [0, " + high + "]]";
    };
  }

  /** In the middle sheet, whose seams stand about 1001 and 2003. */
  private static Arbitrary<String> openings() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(1200, 1350),
            Arbitraries.integers().between(150, 200),
            Arbitraries.integers().between(60, 300))
        .as(
            (kind, left, low, size) ->
                switch (kind) {
                  case 0 -> "";
                  case 1 ->
                      "[[cutout]]\nleft = %s\nlow = %s\nwidth = %s\nheight = %s\n"
                          .formatted(left, low, size + 100, size);
                  default ->
                      "[[cutout]]\ncentre = [%s, %s]\ndiameter = %s\n"
                          .formatted(left + 150, low + 150, size);
                });
  }
}
