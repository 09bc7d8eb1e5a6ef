package plycrag.layout.standing;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import plycrag.units.Decimal;

/** Texts of walls with each kind of support. */
final class StandingWalls {
  private static final String FEW = "[inserts]\npitch-across = 600\npitch-up = 600\n";

  private StandingWalls() {}

  /** On posts, stiffened in any way. */
  static Arbitrary<String> freestanding() {
    Arbitrary<String> support =
        Combinators.combine(
                Arbitraries.of("braces", "knee-braces"),
                Arbitraries.of("braces", "knee-braces"),
                Arbitraries.integers().between(300, 900),
                Arbitraries.integers().between(700, 1500),
                Arbitraries.integers().between(500, 1500))
            .as(
                (lateral, across, knee, bay, behind) ->
                    """
                    [support]
                    kind = "freestanding"
                    lateral = "%s"
                    across = "%s"
                    knee = %d
                    bay = %d
                    behind = %d
                    """
                        .formatted(lateral, across, knee, bay, behind));
    return Combinators.combine(faces(-15, 55, 0), support).as(String::concat);
  }

  /** Tied to what is behind it. */
  static Arbitrary<String> fixed() {
    Arbitrary<String> base = Arbitraries.of("masonry", "concrete", "studs");
    return Combinators.combine(faces(-15, 55, 300), base)
        .as((faces, to) -> faces + "[support]\nkind = \"fixed\"\nfixed-to = \"" + to + "\"\n");
  }

  /** From a ceiling. */
  static Arbitrary<String> hung() {
    return faces(22, 85, 300)
        .map(
            faces ->
                faces
                    + "[support]\nkind = \"hung\"\n[room]\nceiling = 3400\n"
                    + "ceiling-members = \"joists\"\njoist-section = [50, 200]\n"
                    + "joist-span = 3000\n");
  }

  /** On hinges. */
  static Arbitrary<String> hinged() {
    return faces(5, 50, 300)
        .map(
            faces ->
                faces.replace("[wall]", "[wall]\nfold-edges = \"square\"")
                    + "[support]\nkind = \"hinged\"\nfixed-to = \"masonry\"\nbehind = 500\n");
  }

  /** All of them. */
  static Arbitrary<String> any() {
    return Arbitraries.oneOf(List.of(freestanding(), fixed(), hung(), hinged()));
  }

  private static Arbitrary<String> faces(double least, double most, int kick) {
    return Combinators.combine(
            Arbitraries.doubles().between(least, most),
            Arbitraries.integers().between(900, 2600),
            Arbitraries.integers().between(1500, 2600),
            Arbitraries.integers().between(kick, kick + 300))
        .as(
            (angle, length, width, lower) ->
                "[wall]\nwidth = "
                    + width
                    + (kick > 0
                        ? "\n[[facet]]\nname = \"kick\"\nlength = " + lower + "\n"
                        : "\nraise = 250\n")
                    + "[[facet]]\nname = \"main\"\nangle = "
                    + Decimal.of(angle, 3)
                    + "\nlength = "
                    + length
                    + "\n"
                    + FEW);
  }
}
