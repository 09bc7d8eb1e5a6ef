package plycrag.trial;

/** Sheets, timber, inserts, screws and the machine, at random. */
final class WorkshopDrafts {
  private final Draft draft;

  WorkshopDrafts(Draft draft) {
    this.draft = draft;
  }

  void write() {
    draft.perhaps(0.3, this::sheet);
    draft.perhaps(0.05, this::stockSheet);
    draft.perhaps(0.15, this::nesting);
    draft.perhaps(0.3, this::frame);
    draft.perhaps(0.1, this::joints);
    draft.perhaps(0.1, this::stock);
    draft.perhaps(0.7, this::inserts);
    draft.perhaps(0.2, this::screws);
    draft.perhaps(0.25, this::machine);
    draft.perhaps(0.15, this::tool);
    draft.perhaps(0.1, this::tool);
    draft.perhaps(0.05, this::keepOut);
    draft.perhaps(0.1, this::output);
  }

  private void sheet() {
    draft.table("sheet");
    if (draft.chance(0.4)) {
      draft.word("size", draft.of("2440x1220", "2500x1250", "2400x1200", "4x8"));
    } else {
      double width = draft.isWild() ? draft.length(300, 1600) : draft.length(1000, 1550);
      draft.length("width", width);
      draft.length("length", draft.length(width, draft.isWild() ? 4000 : 3100));
    }
    draft.perhapsLength("thickness", 0.4, () -> draft.isWild() ? draft.length(6, 40) : 21);
    draft.perhaps(0.4, () -> draft.word("lay", draft.of("across", "up")));
    draft.perhaps(0.2, () -> draft.word("bond", draft.of("aligned", "staggered")));
    draft.perhaps(
        0.2,
        () ->
            draft.word(
                "start", draft.of("lower-left", "lower-right", "upper-left", "upper-right")));
    draft.perhapsLength("seam-gap", 0.2, () -> draft.length(0, 5));
    draft.perhapsLength("least-width", 0.2, () -> draft.length(50, 600));
    draft.perhaps(0.1, () -> draft.word("edges", draft.of("trimmed", "as-bought")));
  }

  private void stockSheet() {
    draft.each("stock-sheet");
    draft.length("length", draft.length(300, 3000));
    draft.length("width", draft.length(300, 1500));
    draft.perhaps(0.6, () -> draft.number("at-hand", draft.whole(1, 5)));
  }

  private void nesting() {
    draft.table("nesting");
    draft.perhaps(0.5, () -> draft.word("cut-with", draft.of("saw", "router")));
    draft.perhapsLength("kerf", 0.4, () -> draft.of(0.0, draft.length(0, 10)));
    draft.perhapsLength("tool-gap", 0.2, () -> draft.length(0, 50));
    draft.perhapsLength("edge-trim", 0.2, () -> draft.length(0, 50));
    draft.perhapsLength("hold-down", 0.1, () -> draft.length(0, 100));
    draft.perhaps(0.3, () -> draft.word("grain", draft.of("kept", "free")));
    draft.perhaps(0.3, () -> draft.word("face-up", draft.of("front", "back")));
  }

  private void frame() {
    draft.table("frame");
    if (draft.chance(0.5)) {
      draft.word("section", draft.of("2x3", "2x4", "2x6", "2x8"));
    } else {
      double depth = draft.isWild() ? draft.length(30, 250) : draft.length(90, 150);
      draft.line("section = " + draft.corner(draft.isWild() ? draft.length(15, 120) : 60, depth));
    }
    draft.perhapsLength("stud-spacing", 0.5, () -> draft.length(draft.isWild() ? 100 : 300, 800));
    draft.perhaps(0.4, () -> draft.word("seams", draft.of("doubled", "flat", "shared")));
    draft.perhaps(0.1, () -> draft.word("edge-studs", draft.of("single", "doubled")));
    draft.perhaps(0.1, () -> draft.word("long-studs", draft.of("refused", "spliced")));
    draft.perhapsLength("blocking-spacing", 0.2, () -> draft.length(200, 2000));
  }

  private void joints() {
    draft.table("joints");
    draft.perhaps(0.4, () -> draft.number("bracket-screws", draft.whole(2, 40)));
    draft.perhapsLength("bolt-diameter", 0.4, () -> draft.length(6, 24));
    draft.perhapsLength("bolt-spacing", 0.4, () -> draft.length(100, 1200));
    draft.perhapsLength("screw-diameter", 0.3, () -> draft.length(3, 12));
  }

  private void stock() {
    draft.table("stock");
    draft.perhapsLength("kerf", 0.3, () -> draft.length(0, 10));
    draft.perhapsLength("end-trim", 0.3, () -> draft.length(0, 100));
    draft.perhapsLength("carry-length", 0.3, () -> draft.length(300, 6000));
    draft.perhaps(0.4, () -> draft.word("environment", draft.of("indoors", "damp", "outdoors")));
  }

  private void inserts() {
    draft.table("inserts");
    draft.perhaps(
        0.6, () -> draft.word("pattern", draft.of("grid", "offset", "density", "scatter", "none")));
    draft.perhapsLength("pitch-across", 0.5, () -> draft.length(draft.isWild() ? 90 : 140, 400));
    draft.perhapsLength("pitch-up", 0.5, () -> draft.length(draft.isWild() ? 90 : 140, 400));
    draft.perhapsLength("top-pitch-up", 0.1, () -> draft.length(100, 500));
    draft.perhapsLength("setback", 0.3, () -> draft.length(0, draft.isWild() ? 1000 : 150));
    draft.perhaps(0.1, () -> draft.word("symmetry", draft.of("none", "left-right")));
    draft.perhaps(0.2, () -> draft.word("kind", draft.of("hammer-in", "screw-on")));
    draft.perhapsLength("flange", 0.1, () -> draft.length(20, 60));
    draft.perhapsLength("barrel", 0.1, () -> draft.length(5, 20));
    draft.perhapsLength("recess-depth", 0.05, () -> draft.length(0.5, 5));
    draft.perhaps(
        0.6,
        () ->
            draft.word(
                "when-blocked", draft.of("report", "report", "shift", "nudge", "drop", "solve")));
  }

  private void screws() {
    draft.table("screws");
    draft.perhapsLength("diameter", 0.3, () -> draft.length(3, 8));
    draft.perhapsLength("length", 0.3, () -> draft.length(20, 120));
    draft.perhaps(0.3, () -> draft.line("predrilled = " + draft.of("true", "false")));
    draft.perhapsLength("edge-spacing", 0.4, () -> draft.length(50, 400));
    draft.perhapsLength("field-spacing", 0.4, () -> draft.length(50, 800));
  }

  private void machine() {
    draft.table("machine");
    draft.perhaps(0.3, () -> draft.word("z-zero", draft.of("spoilboard", "sheet-top")));
    draft.perhaps(0.2, () -> draft.word("origin", draft.of("lower-right", "upper-left")));
    draft.perhapsLength("travel-x", 0.2, () -> draft.length(1000, 4000));
    draft.perhaps(0.3, () -> draft.word("screw-holes", draft.of("none", "through")));
    draft.perhaps(0.2, () -> draft.word("marks", draft.of("none", "engraved")));
    draft.perhapsLength("mark-height", 0.1, () -> draft.length(4, 40));
    draft.perhaps(0.3, () -> draft.word("drill-cycles", draft.of("moves", "canned")));
    draft.perhaps(0.3, () -> draft.word("tool-change", draft.of("program", "pause", "word")));
    draft.perhaps(0.3, () -> draft.line("arcs = " + draft.of("true", "false")));
    draft.perhaps(0.4, () -> draft.word("outlines", draft.of("none", "tabs", "skin")));
    draft.perhaps(0.2, () -> draft.word("cut-direction", draft.of("climb", "conventional")));
    draft.perhaps(0.2, () -> draft.word("program-unit", draft.of("mm", "in")));
    draft.perhapsLength("plunge-feed", 0.2, () -> draft.length(10, 2000));
  }

  private void tool() {
    draft.each("tool");
    String kind = draft.of("drill", "countersink", "engraver", "end-mill", "end-mill");
    draft.word("kind", kind);
    draft.length("diameter", draft.isWild() ? draft.length(1, 30) : draft.of(6.0, 8.0, 10.0, 12.0));
    draft.length("length", draft.isWild() ? draft.length(3, 80) : draft.length(25, 60));
    draft.perhapsLength("plunge-feed", 0.3, () -> draft.length(10, 3000));
    draft.perhapsLength("cut-feed", 0.3, () -> draft.length(10, 5000));
    draft.perhapsLength("pass-depth", 0.3, () -> draft.length(0.2, 30));
    draft.perhaps(0.1, () -> draft.number("point-angle", draft.whole(20, 150)));
    draft.perhapsLength("tip-diameter", 0.1, () -> draft.length(0, 10));
  }

  private void keepOut() {
    draft.each("keep-out");
    draft.length("left", draft.length(-100, 2000));
    draft.length("low", draft.length(-100, 1000));
    draft.length("width", draft.length(1, 200));
    draft.length("height", draft.length(1, 200));
    draft.length("rise", draft.length(0, 20));
  }

  private void output() {
    draft.table("output");
    draft.perhaps(0.4, () -> draft.word("dxf", draft.of("r2000", "r12")));
    draft.perhaps(0.4, () -> draft.word("paper", draft.of("a4", "a3", "letter", "tabloid")));
    draft.perhaps(0.4, () -> draft.word("template-paper", draft.of("a4", "a3", "letter", "roll")));
    draft.perhaps(0.3, () -> draft.word("templates", draft.of("auto", "sheets")));
  }
}
