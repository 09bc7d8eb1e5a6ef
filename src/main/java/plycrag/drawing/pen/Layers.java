package plycrag.drawing.pen;

import plycrag.document.Dash;
import plycrag.document.Ink;
import plycrag.document.Layer;
import plycrag.document.Pen;

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

  /** What is added in a step. */
  public static final Layer ADDED = notCut("ADDED", new Pen(0.35, Dash.SOLID, Ink.VERMILION));

  public static final Layer FINDINGS = notCut("FINDINGS", Pen.ATTENTION);

  /** The edges of a stock sheet, which nothing cuts. */
  public static final Layer SHEET = notCut("SHEET", Pen.CONTEXT);

  /** What stands in a drawing for cutting only to be read. */
  public static final Layer NOT_CUT = new Layer("NOT_FOR_CUTTING", Pen.CONTEXT);

  /** Words on a drawing that must not be made. */
  public static final Layer STAMP = new Layer("NOT_FOR_CUTTING", Pen.ATTENTION);

  private Layers() {}

  private static Layer notCut(String name, Pen pen) {
    return new Layer("NOT_FOR_CUTTING_" + name, pen);
  }
}
