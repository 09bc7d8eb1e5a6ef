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

  /** One facet with a notch for a doorway, a beam, a stair or a gable, or a step in its side. */
  public static Arbitrary<String> notched() {
    return Combinators.combine(
            whole(1800, 4500), whole(1300, 2600), parts(6), whole(0, 5), whole(-10, 45), frames())
        .as(
            (width, length, parts, kind, angle, frame) ->
                "[wall]\n[[facet]]\nangle = %d\noutline = [%s]\n%s[inserts]\npattern = \"none\"\n"
                    .formatted(angle, notched(width, length, parts, kind), frame));
  }

  private static String notched(int width, int length, List<Integer> parts, int kind) {
    int left = 250 + part(parts, 0, width - 1050);
    int right = left + 200 + part(parts, 1, Math.min(1200, width - left - 250) - 200);
    int deep = 200 + part(parts, 2, length - 700);
    int low = 250 + part(parts, 3, length - 850);
    int high = low + 200 + part(parts, 4, length - low - 450);
    int in = 200 + part(parts, 5, width - 800);
    String all = corners(0, 0, width, 0, width, length);
    return switch (kind) {
      case 0 ->
          corners(0, 0, left, 0, left, deep, right, deep, right, 0, width, 0, width, length)
              + corners(0, length);
      case 1 -> all + corners(0, length, 0, high, in, high, in, low, 0, low);
      case 2 -> corners(0, 0, width, 0, width, low, in, low, in, length, 0, length);
      case 3 -> all + corners(in, length, in, low, 0, low);
      case 4 ->
          all
              + corners(right, length, right, length - deep, left, length - deep, left, length)
              + corners(0, length);
      default ->
          all
              + corners(right, length, (left + right) / 2, length - deep, left, length)
              + corners(0, length);
    };
  }

  private static String corners(int... numbers) {
    StringBuilder corners = new StringBuilder();
    for (int at = 0; at < numbers.length; at += 2) {
      corners.append("[%d, %d], ".formatted(numbers[at], numbers[at + 1]));
    }
    return corners.toString();
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
            Arbitraries.integers().between(0, 2), Arbitraries.integers().between(0, 2), parts(5))
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
    int width = 150 + part(opening.parts(), 0, Math.min(1200, acrossRoom) - 150);
    int height = 150 + part(opening.parts(), 1, Math.min(1000, upRoom) - 150);
    int left = MARGIN + part(opening.parts(), 2, acrossRoom - width);
    int low = MARGIN + part(opening.parts(), 3, upRoom - height);
    int across = Math.min(width, height);
    return switch (opening.kind()) {
      case 0 -> "left = %d\nlow = %d\nwidth = %d\nheight = %d".formatted(left, low, width, height);
      case 1 ->
          "centre = [%s, %s]\ndiameter = %d"
              .formatted(left + across / 2.0, low + across / 2.0, across);
      default ->
          "outline = [[%d, %d], [%d, %d], [%d, %d]]"
              .formatted(
                  left,
                  low,
                  left + width,
                  low,
                  left + part(opening.parts(), 4, width),
                  low + height);
    };
  }

  private static Arbitrary<List<Integer>> parts(int count) {
    return whole(0, 1000).list().ofSize(count);
  }

  private static int part(List<Integer> parts, int number, int room) {
    return parts.get(number) * room / 1000;
  }

  private static Arbitrary<Integer> whole(int least, int most) {
    return Arbitraries.integers().between(least, most);
  }
}
