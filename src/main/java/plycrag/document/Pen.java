package plycrag.document;

import java.util.Objects;

/**
 * How the lines of a layer look at final size.
 *
 * @param width mm on paper
 * @param dash how the line runs
 * @param ink its colour
 */
public record Pen(double width, Dash dash, Ink ink) {
  /** The outline of what the picture is about. */
  public static final Pen OUTLINE = new Pen(0.5, Dash.SOLID, Ink.BLACK);

  /** Its parts. */
  public static final Pen PART = new Pen(0.35, Dash.SOLID, Ink.BLACK);

  /** Dimensions, leaders, text. */
  public static final Pen FINE = new Pen(0.25, Dash.SOLID, Ink.BLACK);

  /** Centre lines. */
  public static final Pen CENTRE = new Pen(0.25, Dash.CHAIN, Ink.BLACK);

  /** What lies behind. */
  public static final Pen BEHIND = new Pen(0.18, Dash.DASHED, Ink.GREY);

  /** Context and hatching. */
  public static final Pen CONTEXT = new Pen(0.18, Dash.SOLID, Ink.GREY);

  /** Limits such as setbacks. */
  public static final Pen LIMIT = new Pen(0.25, Dash.DOTTED, Ink.BLACK);

  /** Findings and cautions. */
  public static final Pen ATTENTION = new Pen(0.5, Dash.SOLID, Ink.VERMILION);

  /** Rejects a line without width. */
  public Pen {
    Objects.requireNonNull(dash);
    Objects.requireNonNull(ink);
    if (!(width > 0)) {
      throw new IllegalArgumentException("pen width " + width);
    }
  }
}
