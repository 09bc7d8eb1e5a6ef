package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Layer;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;

/** The words under a view, and the stamp above one that must not be made. */
public final class TitleLines {
  /** What is said of a wall that nothing holds up yet. */
  private static final String FRAME_ONLY = "Support not designed: frame only";

  /** What is said wherever a wall is shown. */
  public static final String BOULDERING = "For bouldering only, over mats. No rope, no belay.";

  /** What is said of a wall with an error finding. */
  public static final String STAMP = "NOT FOR MAKING";

  /** What is said wherever something is shown that is fixed to a building. */
  public static final String FIXING =
      "Before you drill into a building: find cables and pipes, and rule out asbestos.";

  /** What is said wherever mats are shown, or the floor that they cover. */
  public static final String MATTING = "Mats as their maker and the local standard ask.";

  private static final String NOT_CALCULATED = "Support set out, its strength not calculated";
  private static final String NOT_APPROVED = "Support set out, its strength not approved";

  private static final double STEP = 5.5;
  private static final double STAMP_HEIGHT = 7;

  private final List<String> lines = new ArrayList<>();

  /** Starts with the title; notes follow. */
  TitleLines(CheckedLayout checked, String title, int scale, List<String> notes) {
    lines.add(title);
    notes.forEach(lines::add);
    lines.add("Scale 1:" + scale + ". " + support(checked) + ".");
    lines.add(BOULDERING);
  }

  /** What is known of what holds the wall up. */
  public static String support(CheckedLayout checked) {
    if (checked.layout().support().isEmpty()) {
      return FRAME_ONLY;
    }
    return checked.isReckoned() ? NOT_APPROVED : NOT_CALCULATED;
  }

  /** How much room the lines take on paper, mm. */
  double room() {
    return lines.size() * STEP + 2;
  }

  /** Sets the lines below a place, the first large. */
  void draw(Sketch sketch, Xy under) {
    double height = Sketch.LARGE;
    Xy at = under;
    for (String line : lines) {
      at = at.plus(0, -sketch.paper(STEP));
      sketch.label(Layers.TEXT, at, line, height, TextAnchor.START);
      height = Sketch.SMALL;
    }
  }

  /** The greatest width of the lines on paper, mm. */
  double width() {
    double width = TextSize.width(lines.get(0), Sketch.LARGE);
    for (String line : lines) {
      width = Math.max(width, TextSize.width(line, Sketch.SMALL));
    }
    return width;
  }

  /** How wide the stamp is on paper, mm. */
  public static double stampWidth() {
    return TextSize.width(STAMP, STAMP_HEIGHT);
  }

  /** Stamps what must not be made. */
  public static void stamp(CheckedLayout checked, Sketch sketch, Layer layer, Xy at) {
    if (!checked.isApproved()) {
      sketch.label(layer, at, STAMP, STAMP_HEIGHT, TextAnchor.START);
    }
  }
}
