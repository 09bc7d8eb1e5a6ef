package plycrag.files;

import java.util.List;
import java.util.stream.IntStream;
import plycrag.document.Dash;
import plycrag.document.Drawing;
import plycrag.document.DrillProgram;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Ink;
import plycrag.document.Layer;
import plycrag.document.Move;
import plycrag.document.Pen;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.files.ngc.Dialect;
import plycrag.units.LengthUnit;

/** A small drawing and a small program with one of everything. */
public final class Specimens {
  public static final Layer OUTLINE = new Layer("OUTLINE_THROUGH", Pen.OUTLINE);
  public static final Layer BORE = new Layer("BORE_12_0_THROUGH", Pen.PART);
  public static final Layer NOTES = new Layer("NOT_FOR_CUTTING", Pen.FINE);
  public static final Layer CENTRE = new Layer("CENTRE_LINES", Pen.CENTRE);
  public static final Layer BEHIND = new Layer("BEHIND", Pen.BEHIND);
  public static final Layer LIMIT = new Layer("SETBACK", new Pen(0.25, Dash.DOTTED, Ink.VERMILION));

  /** Suits the plainest controllers. */
  public static final Dialect PLAIN =
      new Dialect(
          new Dialect.Words(false, false, false, false),
          new Dialect.Look(Dialect.Comments.PARENTHESES, false, 72),
          LengthUnit.MM,
          3);

  private Specimens() {}

  /** A sheet of 1200 × 600 mm at 1:10 with 50 mm about it. */
  public static Drawing sheet() {
    return new Drawing(
        "Boathouse: sheet S1 <front> & more",
        10,
        new Extent(-50, -50, 1250, 650),
        List.of(
            outline(OUTLINE, Fill.TIMBER, 0, 0, 1200, 0, 1200, 600, 0, 600),
            new Shape.Area(NOTES, List.of(new Xy(0, 0), new Xy(60, 0), new Xy(0, 60)), Fill.INK),
            new Shape.Circle(BORE, new Xy(200, 300.25), 6, Fill.PAPER),
            new Shape.Circle(BORE, new Xy(1000.5, 300.25), 6, Fill.PAPER),
            new Shape.Line(CENTRE, new Xy(50, 300.25), new Xy(1150, 300.25)),
            new Shape.Line(BEHIND, new Xy(600, 50), new Xy(600, 550)),
            new Shape.Path(LIMIT, List.of(new Xy(100, 100), new Xy(1100, 100), new Xy(1100, 500))),
            new Shape.Label(NOTES, new Xy(600, 450), "Ø 12 & <5>", 3.5, TextAnchor.MIDDLE, 0),
            new Shape.Label(NOTES, new Xy(150, 450), "up \\ ^J", 2.5, TextAnchor.START, 90)));
  }

  /** An outline from x, y, x, y … */
  public static Shape.Outline outline(Layer layer, Fill fill, double... numbers) {
    return new Shape.Outline(
        layer,
        IntStream.range(0, numbers.length / 2)
            .mapToObj(i -> new Xy(numbers[2 * i], numbers[2 * i + 1]))
            .toList(),
        fill);
  }

  /** Two holes in an 18 mm sheet, Z0 on its top. */
  public static DrillProgram twoHoles() {
    return new DrillProgram(
        "S1",
        "front",
        1,
        List.of("Sheet S1 (front): Séance wall", "Z0 sheet top", "T1 drill 12.0 mm"),
        List.of(
            new Move.RapidZ(25),
            new Move.SpindleOn(16_000),
            new Move.Dwell(4),
            new Move.RapidXy(200, 300.25),
            new Move.RapidZ(5),
            new Move.Plunge(-18.5, 900),
            new Move.RapidZ(5),
            new Move.RapidXy(1000.5, 300.25),
            new Move.Plunge(-18.5, 900),
            new Move.RapidZ(25),
            new Move.SpindleOff()),
        List.of());
  }
}
