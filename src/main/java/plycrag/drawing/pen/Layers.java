package plycrag.drawing.pen;

import plycrag.document.Dash;
import plycrag.document.Ink;
import plycrag.document.Layer;
import plycrag.document.Pen;
import plycrag.layout.sheets.MachinedHole;
import plycrag.units.Decimal;

/** The layers there are. */
public final class Layers {
  public static final Layer OUTLINE = notCut("OUTLINE", Pen.OUTLINE);
  public static final Layer PARTS = notCut("PARTS", Pen.PART);
  public static final Layer HOLES = notCut("HOLES", Pen.FINE);
  public static final Layer FLANGES = notCut("FLANGES", new Pen(0.18, Dash.SOLID, Ink.BLACK));
  public static final Layer SCREWS = notCut("SCREWS", Pen.FINE);
  public static final Layer HARDWARE = notCut("HARDWARE", Pen.FINE);
  static final Layer SCREW_POINTS = notCut("SCREW_POINTS", Pen.FINE);
  public static final Layer ZONES = notCut("ZONES", Pen.LIMIT);
  public static final Layer BEHIND = notCut("BEHIND", Pen.BEHIND);
  public static final Layer SETBACK = notCut("SETBACK", Pen.LIMIT);
  public static final Layer DIMENSIONS = notCut("DIMENSIONS", Pen.FINE);
  public static final Layer TEXT = notCut("TEXT", Pen.FINE);
  public static final Layer CENTRE = notCut("CENTRE", Pen.CENTRE);
  public static final Layer BARS = notCut("BARS", Pen.PART);
  public static final Layer CROSSES = notCut("CROSSES", Pen.FINE);
  public static final Layer TILES = notCut("TILES", Pen.FINE);
  static final Layer SMALL_PRINT = notCut("SMALL_PRINT", Pen.CONTEXT);
  public static final Layer CONTEXT = notCut("CONTEXT", Pen.CONTEXT);
  public static final Layer TINT = notCut("TINT", new Pen(0.18, Dash.SOLID, Ink.BLACK));
  public static final Layer FINDINGS = notCut("FINDINGS", Pen.ATTENTION);

  /** The edge of a piece. */
  public static final Layer CUT = new Layer("OUTLINE_THROUGH", Pen.OUTLINE);

  /**
   * What remains of the edge of a piece that shares the rest with the edge of another, where a saw
   * that takes nothing divides them: one cut makes both, and is drawn once.
   */
  static final Layer CUT_BESIDE = new Layer("EDGE_THROUGH", Pen.OUTLINE);

  /** Words on a drawing for cutting. */
  public static final Layer STAMP = new Layer("NOT_FOR_CUTTING", Pen.ATTENTION);

  private Layers() {}

  /** Through holes of a diameter: {@code BORE_12_0_THROUGH}. */
  private static Layer bore(double diameter) {
    return new Layer("BORE_" + size(diameter) + "_THROUGH", Pen.PART);
  }

  /**
   * What makes a hole: through, a cone with its diameter on the face and its depth, or a pocket
   * with its depth and what it leaves of a sheet of a thickness, mm.
   */
  public static Layer of(MachinedHole hole, double thickness) {
    return switch (hole.kind()) {
      case COUNTERSINK ->
          new Layer(
              "SINK_" + size(hole.bore().diameter()) + "_DEPTH_" + size(hole.bore().depth()),
              Pen.PART);
      case RECESS -> pocket(hole.bore().depth(), thickness);
      case INSERT, SCREW, PIN -> bore(hole.bore().diameter());
    };
  }

  /** To the hundredth, so that the name keeps to the 31 characters that a layer's may have. */
  private static Layer pocket(double depth, double thickness) {
    String left = size(thickness - depth, 2);
    return new Layer("POCKET_DEPTH_" + size(depth, 2) + "_LEAVES_" + left, Pen.PART);
  }

  /** Letters engraved so deep: {@code ENGRAVE_DEPTH_0_4}. */
  public static Layer engraved(double depth) {
    return new Layer("ENGRAVE_DEPTH_" + size(depth), Pen.FINE);
  }

  private static String size(double length) {
    return size(length, 4);
  }

  private static String size(double length, int decimals) {
    String size = Decimal.of(length, decimals).replace('.', '_');
    return size.contains("_") ? size : size + "_0";
  }

  private static Layer notCut(String name, Pen pen) {
    return new Layer("NOT_FOR_CUTTING_" + name, pen);
  }
}
