package plycrag;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * Parameter files at random with one to three facets above each other, one of them with an opening
 * anywhere, seams or not, 150 mm or more from its edges.
 */
public final class FaceTexts {
  private static final int MARGIN = 150;

  private FaceTexts() {}

  /** Kicks, slabs and overhangs with windows, portholes and gables. */
  public static Arbitrary<String> any() {
    return Combinators.combine(whole(1200, 5000), facets(), opening(), frames())
        .as(FaceTexts::text);
  }

  /** A facet's length and how much further than the one below it leans. */
  private record Part(int length, int further) {}

  /** An opening in thousandths of the room that there is for it. */
  private record Opening(int kind, int facet, List<Integer> parts) {}

  private static Arbitrary<List<Part>> facets() {
    return Combinators.combine(whole(700, 3000), whole(5, 25))
        .as(Part::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(3);
  }

  private static Arbitrary<Opening> opening() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(0, 1000).list().ofSize(5))
        .as(Opening::new);
  }

  private static Arbitrary<String> frames() {
    return Combinators.combine(
            Arbitraries.of("45, 95", "45, 145", "38, 89"),
            whole(300, 610),
            Arbitraries.of("doubled", "flat", "shared"))
        .as("[frame]\nsection = [%s]\nstud-spacing = %s\nseams = \"%s\"\n"::formatted);
  }

  private static String text(int width, List<Part> parts, Opening opening, String frame) {
    List<String> texts = new ArrayList<>();
    texts.add("[wall]\nwidth = " + width);
    int angle = -15;
    for (int at = 0; at < parts.size(); at++) {
      angle += parts.get(at).further();
      texts.add(
          "[[facet]]\nname = \"f%d\"\nangle = %d\nlength = %d"
              .formatted(at, angle, parts.get(at).length()));
      if (at == opening.facet() % parts.size()) {
        texts.add("[[cutout]]\nfacet = \"f" + at + "\"");
        texts.add(shape(opening, width - 2 * MARGIN, parts.get(at).length() - 2 * MARGIN));
      }
    }
    return String.join("\n", texts) + "\n" + frame + "[inserts]\npattern = \"none\"\n";
  }

  private static String shape(Opening opening, int acrossRoom, int upRoom) {
    int width = 150 + part(opening, 0, Math.min(1200, acrossRoom) - 150);
    int height = 150 + part(opening, 1, Math.min(1000, upRoom) - 150);
    int left = MARGIN + part(opening, 2, acrossRoom - width);
    int low = MARGIN + part(opening, 3, upRoom - height);
    int across = Math.min(width, height);
    return switch (opening.kind()) {
      case 0 -> "left = %d\nlow = %d\nwidth = %d\nheight = %d".formatted(left, low, width, height);
      case 1 ->
          "centre = [%s, %s]\ndiameter = %d"
              .formatted(left + across / 2.0, low + across / 2.0, across);
      default ->
          "outline = [[%d, %d], [%d, %d], [%d, %d]]"
              .formatted(
                  left, low, left + width, low, left + part(opening, 4, width), low + height);
    };
  }

  private static int part(Opening opening, int number, int room) {
    return opening.parts().get(number) * room / 1000;
  }

  private static Arbitrary<Integer> whole(int least, int most) {
    return Arbitraries.integers().between(least, most);
  }
}
