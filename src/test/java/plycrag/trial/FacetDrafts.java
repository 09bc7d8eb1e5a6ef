package plycrag.trial;

import java.util.ArrayList;
import java.util.List;

/** Facets, what they carry and what is cut out of them, at random. */
final class FacetDrafts {
  /** A facet as far as others must know it, mm. */
  private record Drawn(String name, double width, double length) {}

  private final Draft draft;
  private final boolean hasCorners;
  private final List<Drawn> facets = new ArrayList<>();
  private String foot = "f0";

  FacetDrafts(Draft draft, boolean hasCorners) {
    this.draft = draft;
    this.hasCorners = hasCorners;
  }

  void write() {
    int count = draft.of(1, 1, 1, 2, 2, hasCorners ? 4 : 3);
    for (int at = 0; at < count; at++) {
      write(at, at == count - 1);
    }
    draft.perhaps(0.25, () -> shape("cutout"));
    draft.perhaps(0.05, () -> shape("cutout"));
    draft.perhaps(0.1, () -> zone());
  }

  private void write(int at, boolean isLast) {
    String name = "f" + at;
    draft.each("facet");
    draft.word("name", name);
    draft.perhaps(0.9, () -> draft.number("angle", angle(at)));
    double width = draft.isWild() ? draft.length(300, 2000) : draft.length(600, 2400);
    boolean isKick = at == 0 && draft.chance(0.3);
    double length =
        isKick
            ? draft.length(300, 500)
            : draft.isWild() ? draft.length(300, 2000) : draft.length(500, 2400);
    if (draft.chance(draft.isWild() ? 0.4 : 0.15)) {
      draft.line("outline = " + (isLast ? outline(width, length) : level(width, length)));
    } else {
      draft.length("width", width);
      draft.length("length", length);
    }
    facets.add(new Drawn(name, width, length));
    if (at > 0 && hasCorners && draft.chance(0.5)) {
      draft.word("beside", foot);
      draft.perhaps(0.7, () -> draft.number("turn", turn()));
      foot = name;
    } else if (at > 0 && draft.chance(draft.isWild() ? 0.3 : 0.05)) {
      draft.length("shift", draft.length(-600, 600));
    }
    draft.perhaps(0.08, this::support);
  }

  /** Of its own: filled with what the wall's has, where the file tells that. */
  private void support() {
    draft.table("facet.support");
    draft.word("kind", draft.of("fixed", "freestanding", "hung", "hinged"));
    draft.word("fixed-to", draft.of("studs", "masonry", "concrete", "single-skin"));
    draft.perhapsLength("behind", 0.3, () -> draft.length(100, draft.isWild() ? 4000 : 1200));
  }

  private int angle(int at) {
    if (draft.isWild()) {
      return draft.chance(0.1) ? draft.of(-15, 0, 89, 90) : draft.whole(-15, 90);
    }
    return at == 0 ? draft.of(0, 0, 0, 5, -5, 10, 20, 30, 40) : draft.whole(0, 9) * 5 + 5;
  }

  private int turn() {
    if (draft.isWild()) {
      return draft.whole(5, 90) * draft.of(-1, 1);
    }
    return draft.of(30, 45, 60, 90, -30, -45, -60, -90);
  }

  /** With a level side on top, for what stands on it. */
  private String level(double width, double length) {
    double in = draft.length(0, width / 2);
    return list(
        draft.corner(0, 0),
        draft.corner(width, 0),
        draft.corner(width - in, length),
        draft.corner(draft.of(0.0, in), length));
  }

  /** Tapered, gabled, stepped, slanting, or wild: a fan of corners around the middle. */
  private String outline(double width, double length) {
    double in = draft.length(0, width / 2);
    double up = draft.length(length / 3, length);
    String foot = draft.corner(0, 0) + ", " + draft.corner(width, 0);
    return switch (draft.whole(0, draft.isWild() ? 6 : 4)) {
      case 0 -> level(width, length);
      case 1 -> list(foot, draft.corner(width, up), draft.corner(0, length));
      case 2 ->
          list(
              foot, draft.corner(width, up), draft.corner(width - in, length), draft.corner(0, up));
      case 3 ->
          list(
              foot,
              draft.corner(width, up),
              draft.corner(in, up),
              draft.corner(in, length),
              draft.corner(0, length));
      case 4 -> list(foot, draft.corner(in, length));
      default -> fan(width, length);
    };
  }

  private String fan(double width, double length) {
    List<String> corners = new ArrayList<>();
    double from = draft.length(0, width / 2);
    double to = draft.length(from + 20, width);
    corners.add(draft.corner(from, 0));
    corners.add(draft.corner(to, 0));
    int right = draft.whole(0, 3);
    for (int at = 1; at <= right; at++) {
      corners.add(
          draft.corner(draft.length(width * 0.6, width), length * at / (right + 1.0) * 0.9));
    }
    corners.add(draft.corner(draft.length(0, width), length));
    corners.add(draft.corner(0, draft.length(length * 0.05, length * 0.8)));
    return list(corners.toArray(String[]::new));
  }

  private static String list(String... corners) {
    return "[" + String.join(", ", corners) + "]";
  }

  private void shape(String table) {
    Drawn on = draft.of(facets);
    draft.each(table);
    draft.word("facet", on.name);
    double beyond = draft.isWild() ? 1.2 : 1;
    double left = draft.length(0, on.width * 0.8 * beyond);
    double low = draft.length(0, on.length * 0.8 * beyond);
    switch (draft.whole(0, 4)) {
      case 0, 1 -> {
        draft.length("left", left);
        draft.length("low", low);
        draft.length("width", draft.length(30, on.width * 0.6 * beyond));
        draft.length("height", draft.length(30, on.length * 0.6 * beyond));
      }
      case 2 -> {
        draft.line("centre = " + draft.corner(left, low));
        draft.length("diameter", draft.length(30, on.width * 0.4 * beyond));
      }
      default ->
          draft.line(
              "outline = "
                  + list(
                      draft.corner(left, low),
                      draft.corner(left + draft.length(40, 700), low + draft.of(0.0, 55.0)),
                      draft.corner(left + draft.length(0, 500), low + draft.length(60, 700))));
    }
  }

  private void zone() {
    shape("zone");
    draft.perhaps(0.3, () -> draft.word("points", draft.of("inserts", "screw-points")));
    draft.word("pattern", draft.of("grid", "offset", "scatter", "none", "density"));
    draft.perhapsLength("pitch-across", 0.4, () -> draft.length(60, 400));
    draft.perhapsLength("setback", 0.2, () -> draft.length(0, 200));
  }
}
