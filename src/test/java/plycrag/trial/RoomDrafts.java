package plycrag.trial;

/** What holds a wall up and what is around it, at random. */
final class RoomDrafts {
  private final Draft draft;

  RoomDrafts(Draft draft) {
    this.draft = draft;
  }

  void write() {
    draft.perhaps(0.6, this::support);
    draft.perhaps(0.5, this::room);
    draft.perhaps(0.1, this::obstacle);
    draft.perhaps(
        0.5,
        () -> {
          draft.table("mat");
          draft.length("thickness", draft.length(100, 400));
          draft.perhapsLength("side", 0.2, () -> draft.length(0, 3000));
        });
    draft.perhaps(
        0.1,
        () -> {
          draft.table("handling");
          draft.word("bring-in", draft.of("parts", "frames"));
        });
  }

  private void support() {
    draft.table("support");
    draft.word("kind", draft.of("fixed", "freestanding", "hung", "hinged"));
    draft.perhaps(
        0.8, () -> draft.word("fixed-to", draft.of("studs", "masonry", "concrete", "single-skin")));
    draft.perhapsLength("bay", 0.2, () -> draft.length(300, 3000));
    draft.perhapsLength("behind", 0.3, () -> draft.length(100, draft.isWild() ? 4000 : 1200));
    draft.perhapsLength("front", 0.1, () -> draft.length(0, 2000));
    draft.perhaps(0.2, () -> draft.word("lateral", draft.of("braces", "knee-braces", "sheets")));
    draft.perhaps(0.2, () -> draft.word("across", draft.of("braces", "knee-braces")));
    draft.perhapsLength("knee", 0.1, () -> draft.length(300, 1500));
    draft.perhaps(0.2, () -> draft.word("hold", draft.of("struts", "straps", "chains", "hoist")));
    draft.perhaps(
        0.2,
        () -> {
          int first = draft.whole(0, 40);
          draft.line("angles = [" + first + ", " + (first + draft.whole(1, 40)) + "]");
        });
    draft.perhapsLength("anchor-height", 0.1, () -> draft.length(500, 4000));
    draft.perhapsLength("attach", 0.1, () -> draft.length(100, 3000));
  }

  private void room() {
    draft.table("room");
    draft.perhapsLength("ceiling", 0.8, () -> draft.length(draft.isWild() ? 1000 : 2200, 5000));
    draft.perhaps(0.1, () -> draft.number("ceiling-pitch", draft.whole(-70, 70)));
    draft.perhapsLength("left", 0.2, () -> draft.length(0, 3000));
    draft.perhapsLength("right", 0.2, () -> draft.length(0, 3000));
    draft.perhapsLength("front", 0.3, () -> draft.length(0, 6000));
    draft.perhaps(
        0.3,
        () -> {
          draft.word("ceiling-members", draft.of("joists", "joists", "truss", "unknown"));
          draft.perhaps(0.9, () -> draft.line("joist-section = " + draft.corner(60, 220)));
          draft.perhapsLength("joist-span", 0.9, () -> draft.length(1500, 6000));
          draft.perhapsLength("joist-first", 0.3, () -> draft.length(0, 600));
          draft.perhaps(0.3, () -> draft.word("joist-run", draft.of("out", "along")));
        });
    draft.perhaps(0.1, () -> draft.line("no-drill = true"));
    draft.perhapsLength("floor-fall", 0.1, () -> draft.length(-200, 200));
    draft.perhapsLength("door-width", 0.1, () -> draft.length(600, 1200));
    draft.perhapsLength("door-height", 0.1, () -> draft.length(1000, 2200));
    draft.perhapsLength("stair-width", 0.05, () -> draft.length(600, 1200));
    draft.perhapsLength("stair-height", 0.05, () -> draft.length(1500, 2400));
    draft.perhapsLength("door-passage", 0.05, () -> draft.length(700, 2400));
  }

  private void obstacle() {
    draft.each("obstacle");
    draft.length("left", draft.length(-500, 3000));
    draft.length("out", draft.length(-1000, 3000));
    draft.perhapsLength("low", 0.6, () -> draft.length(0, 3000));
    draft.perhapsLength("width", 0.6, () -> draft.length(1, 3000));
    draft.perhapsLength("height", 0.6, () -> draft.length(1, 3000));
  }
}
