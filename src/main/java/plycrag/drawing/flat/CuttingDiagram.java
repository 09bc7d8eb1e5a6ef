package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Shapes;
import plycrag.stock.Stick;
import plycrag.stock.StickPlan;
import plycrag.units.Tape;

/**
 * How sticks are cut: a bar for each, to scale from its left end on, its pieces with mark and
 * length, kerfs at their width, trimmed ends and offcut hatched. It keeps to the width of a page:
 * what is too narrow for its words has them below the bar, with a leader.
 */
public final class CuttingDiagram {
  /** What sticks take of a page from top to bottom on paper, mm. */
  private static final double A_PAGE = 185;

  /** Height of a bar on paper, mm. */
  private static final double BAR = 12;

  /** From bar to bar on paper, mm; a bar's heading stands between. */
  private static final double STEP = 21;

  /** The least width of a piece that holds its mark and length side by side on paper, mm. */
  private static final double LEAST = 7.5;

  private static final double MARGIN = 1.2;

  /** Room beside the bars for the length of a short offcut on paper, mm. */
  private static final double BESIDE = 6;

  private final CheckedLayout checked;
  private final List<Stick> sticks;
  private final Tape tape;
  private final Sketch sketch;
  private final PieceLeaders leaders;
  private double reach;

  private CuttingDiagram(CheckedLayout checked, List<Stick> sticks, double width) {
    this.checked = checked;
    this.sticks = sticks;
    this.tape = checked.layout().wall().tape();
    this.reach = width;
    this.sketch = new Sketch(Scale.fitting(reach, 1));
    this.leaders = new PieceLeaders(sketch, tape);
  }

  /** The diagram of some sticks of a plan, at least one. */
  public static Drawing of(CheckedLayout checked, StickPlan plan, List<Stick> sticks) {
    return new CuttingDiagram(checked, sticks, longest(plan)).drawing(plan);
  }

  /** So that all pages are to one scale. */
  private static double longest(StickPlan plan) {
    return plan.sticks().stream().mapToDouble(Stick::length).max().orElseThrow();
  }

  /** The diagrams of all sticks of a plan, at one scale, so many on each as go on a page. */
  public static List<Drawing> pages(CheckedLayout checked, StickPlan plan) {
    List<Drawing> pages = new ArrayList<>();
    List<Stick> left = plan.sticks();
    while (!left.isEmpty()) {
      int fit = new CuttingDiagram(checked, left, longest(plan)).fitting();
      pages.add(of(checked, plan, left.subList(0, fit)));
      left = left.subList(fit, left.size());
    }
    return pages;
  }

  /** How many of the sticks go on a page, one at least. */
  private int fitting() {
    double used = room(sticks.get(0));
    int fit = 1;
    while (fit < sticks.size() && used + room(sticks.get(fit)) <= A_PAGE) {
      used += room(sticks.get(fit));
      fit++;
    }
    return fit;
  }

  /** What a stick takes on paper with its heading and what hangs below it, mm. */
  private double room(Stick stick) {
    return STEP + leaders.room(narrow(stick));
  }

  private List<Stick.Cut> narrow(Stick stick) {
    return stick.cuts().stream().filter(this::isNarrow).toList();
  }

  /** Whether neither a line of words goes into a piece nor two upright ones. */
  private boolean isNarrow(Stick.Cut cut) {
    double width = cut.end() - cut.offset();
    String mark = cut.member().mark();
    String length = tape.reading(cut.member().length());
    boolean isTall = mostly(mark, length) + MARGIN > BAR;
    return width < sketch.paper(isTall ? mostly(mark, length) + MARGIN : LEAST);
  }

  private Drawing drawing(StickPlan plan) {
    double base = 0;
    double width = reach;
    for (Stick stick : sticks) {
      draw(stick, plan.isMixed(), base - sketch.paper(STEP));
      base -= sketch.paper(room(stick));
    }
    List<String> notes =
        List.of(
            section(plan) + " Lengths in " + tape.unit().plural() + ".",
            "Cut from the left, one piece after the other. Hatched: offcut, with its length.");
    double unused = sketch.paper(RunningDimensions.ROOM - 3);
    double left = Math.min(unused, width / 2);
    double low = Math.min(base + unused, -sketch.paper(1));
    Extent view = new Extent(left, low, Math.max(width + sketch.paper(BESIDE), reach), 0);
    return new ViewPage(view, false).finish(checked, sketch, title(plan), notes);
  }

  private static String section(StickPlan plan) {
    return plan.isMixed() ? "Sections in mm." : "Section " + plan.sections().get(0).name() + " mm.";
  }

  private String title(StickPlan plan) {
    int first = sticks.get(0).number();
    int last = sticks.get(sticks.size() - 1).number();
    boolean whole = sticks.size() == plan.sticks().size();
    return "Cutting plan"
        + (whole ? "" : first == last ? ", stick " + first : ", sticks " + first + " to " + last);
  }

  private void draw(Stick stick, boolean saysSection, double base) {
    String heading =
        "Stick "
            + stick.number()
            + (saysSection ? " of " + stick.section() : "")
            + ": "
            + tape.text(stick.length())
            + (stick.isAtHand() ? ", at hand" : "")
            + (stick.isLacking() ? ", lacking: to be found elsewhere" : "");
    double above = base + sketch.paper(BAR + 3.5);
    sketch.label(Layers.TEXT, new Xy(0, above), heading, Sketch.LARGE, TextAnchor.START);
    double trim = checked.layout().wall().stock().endTrim();
    if (trim > 0) {
      drawWaste(0, trim, base, new Envelope());
    }
    stick.cuts().forEach(cut -> drawPiece(cut, base));
    reach = Math.max(reach, leaders.draw(narrow(stick), base));
    double end = stick.cuts().get(stick.cuts().size() - 1).end();
    Envelope words = labelOffcut(stick, end, base);
    if (stick.length() - end > sketch.paper(0.1)) {
      drawWaste(end, stick.length(), base, words);
    }
    frame(Layers.OUTLINE, 0, stick.length(), base);
  }

  private void drawPiece(Stick.Cut cut, double base) {
    double left = cut.offset();
    double right = cut.end();
    sketch.area(Layers.TINT, corners(left, right, base), Fill.TIMBER);
    frame(Layers.PARTS, left, right, base);
    if (!isNarrow(cut)) {
      name(cut, base);
    }
  }

  private void name(Stick.Cut cut, double base) {
    double width = cut.end() - cut.offset();
    String mark = cut.member().mark();
    String length = tape.reading(cut.member().length());
    double middle = (cut.offset() + cut.end()) / 2;
    double needed = TextSize.width(mark + " " + length, Sketch.LARGE) + 2 * MARGIN;
    double centre = base + sketch.paper(BAR / 2);
    if (width >= sketch.paper(needed)) {
      sketch.label(
          Layers.TEXT,
          new Xy(middle, centre),
          mark + "  " + length,
          Sketch.LARGE,
          TextAnchor.MIDDLE);
    } else if (width >= sketch.paper(mostly(mark, length) + MARGIN)) {
      double apart = sketch.paper(2.2);
      small(new Xy(middle, centre + apart), mark);
      small(new Xy(middle, centre - apart), length);
    } else {
      double apart = sketch.paper(1.8);
      up(new Xy(middle - apart, centre), mark);
      up(new Xy(middle + apart, centre), length);
    }
  }

  /** The width of the longer of two small texts on paper, mm. */
  private static double mostly(String mark, String length) {
    return Math.max(TextSize.width(mark, Sketch.SMALL), TextSize.width(length, Sketch.SMALL));
  }

  /**
   * In the hatching where there is room, beside the bar where not; what it takes of the hatching.
   */
  private Envelope labelOffcut(Stick stick, double end, double base) {
    double kerf = checked.layout().wall().stock().kerf();
    double trim = checked.layout().wall().stock().endTrim();
    double offcut = tape.snapDown(stick.length() - trim - end - kerf);
    if (offcut <= 0) {
      return new Envelope();
    }
    String text = tape.reading(offcut);
    double centre = base + sketch.paper(BAR / 2);
    double room = sketch.paper(TextSize.width(text, Sketch.SMALL) / 2 + 0.6);
    if (2 * room > stick.length() - end) {
      Xy beside = new Xy(stick.length() + sketch.paper(MARGIN), centre);
      sketch.label(Layers.TEXT, beside, text, Sketch.SMALL, TextAnchor.START);
      return new Envelope();
    }
    Xy at = new Xy((end + stick.length()) / 2, centre);
    double high = sketch.paper(Sketch.SMALL / 2 + 0.8);
    small(at, text);
    return new Envelope(at.x() - room, at.x() + room, at.y() - high, at.y() + high);
  }

  private void small(Xy at, String text) {
    sketch.label(Layers.TEXT, at, text, Sketch.SMALL, TextAnchor.MIDDLE);
  }

  private void up(Xy at, String text) {
    sketch.labelUp(Layers.TEXT, at, text, Sketch.SMALL, TextAnchor.MIDDLE);
  }

  /** Thin lines at 45° from one edge of the bar to the other, cut off at its ends and at words. */
  private void drawWaste(double left, double right, double base, Envelope words) {
    double height = sketch.paper(BAR);
    double step = sketch.paper(2.5);
    for (double foot = left - height + step; foot < right; foot += step) {
      double from = Math.max(foot, left);
      double to = Math.min(foot + height, right);
      Geometry line = Shapes.line(from, base + from - foot, to, base + to - foot);
      Geometry clear = words.isNull() ? line : Shapes.without(line, Shapes.rectangle(words));
      LineWork.lines(clear, sketch).forEach(part -> LineWork.draw(sketch, Layers.CONTEXT, part));
    }
  }

  private void frame(Layer layer, double left, double right, double base) {
    List<Xy> corners = corners(left, right, base);
    for (int i = 0; i < corners.size(); i++) {
      sketch.line(layer, corners.get(i), corners.get((i + 1) % corners.size()));
    }
  }

  private List<Xy> corners(double left, double right, double base) {
    double top = base + sketch.paper(BAR);
    return List.of(new Xy(left, base), new Xy(right, base), new Xy(right, top), new Xy(left, top));
  }
}
