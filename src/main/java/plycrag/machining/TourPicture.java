package plycrag.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Dash;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Ink;
import plycrag.document.Layer;
import plycrag.document.Pen;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.sheets.WorkedFace.Order;
import plycrag.machining.Playback.Way;
import plycrag.wall.machine.KeepOut;

/**
 * The sheet as it lies on the machine: its holes, the corner where X and Y are zero, and the way of
 * the tool, across in thin dashes and cutting in a full line; of a sheet that is worked on both
 * faces also the line about which it is turned over.
 */
final class TourPicture {
  private static final Layer SHEET = new Layer("SHEET", Pen.OUTLINE);
  private static final Layer HOLES = new Layer("HOLES", Pen.FINE);
  private static final Layer WAY = new Layer("WAY", new Pen(0.18, Dash.DASHED, Ink.BLACK));
  private static final Layer CUTS = new Layer("CUTS", Pen.PART);
  private static final Layer KEEP_OUT = new Layer("KEEP_OUT", Pen.PART);
  private static final Layer AXIS = new Layer("AXIS", Pen.CENTRE);
  private static final Layer TEXT = new Layer("TEXT", Pen.FINE);
  private static final Layer PIECES = new Layer("PIECES", Pen.FINE);
  private static final double WIDTH = 150;
  private static final double MARGIN = 12;
  private static final double LEG = 4;
  private static final double CAPITALS = 3.5;

  private final WorkedFace face;
  private final LaidSheet sheet;
  private final SheetOrigin origin;
  private final List<KeepOut> keepOuts;
  private final int scale;
  private final List<Shape> shapes = new ArrayList<>();

  TourPicture(WorkedFace face, SheetOrigin origin, List<KeepOut> keepOuts) {
    this.face = face;
    this.sheet = face.sheet();
    this.origin = origin;
    this.keepOuts = List.copyOf(keepOuts);
    double largest = Math.max(sheet.stock().width(), sheet.stock().height());
    this.scale = largest <= WIDTH * 10 ? 10 : largest <= WIDTH * 20 ? 20 : 50;
  }

  /** The picture of all that is done to one face of a sheet. */
  Drawing of(List<ProgramFile> programs) {
    double width = sheet.stock().width();
    double height = sheet.stock().height();
    shapes.add(
        new Shape.Outline(
            SHEET,
            List.of(new Xy(0, 0), new Xy(width, 0), new Xy(width, height), new Xy(0, height)),
            Fill.NONE));
    sheet.pieces().forEach(laid -> addPiece(laid.kept()));
    programs.forEach(file -> addWays(Playback.of(file.program().moves())));
    sheet.holes().stream()
        .sorted(Comparator.<MachinedHole>comparingDouble(hole -> hole.bore().diameter()).reversed())
        .map(TourPicture::circle)
        .forEach(shapes::add);
    keepOuts.forEach(this::addKeepOut);
    if (face.order() != Order.ONLY) {
      shapes.add(
          new Shape.Line(
              AXIS, new Xy(face.axis(), 0), new Xy(face.axis(), sheet.stock().height())));
    }
    addDatum();
    addLetters();
    double around = paper(MARGIN);
    return new Drawing(
        "Sheet " + sheet.mark() + " on the machine, with the way of the tool",
        scale,
        new Extent(-around, -around, width + around, height + around),
        shapes);
  }

  private void addPiece(Polygon kept) {
    shapes.add(outline(kept));
    Shapes.openings(kept).forEach(opening -> shapes.add(outline(opening)));
  }

  private static Shape outline(Polygon area) {
    List<Xy> corners = new ArrayList<>();
    for (Coordinate at : area.getExteriorRing().getCoordinates()) {
      corners.add(new Xy(at.x, at.y));
    }
    return new Shape.Outline(PIECES, corners.subList(1, corners.size()), Fill.NONE);
  }

  /** Beside the holes that are measured to, where no line is. */
  private void addLetters() {
    LetterSpots spots = new LetterSpots(shapes, paper(CAPITALS));
    for (CheckMeasures.Mark mark : CheckMeasures.marks(sheet)) {
      shapes.add(
          new Shape.Label(
              TEXT, spots.near(mark.place()), mark.letter(), CAPITALS, TextAnchor.MIDDLE, 0));
    }
  }

  /** The wider first: each covers what lies under it. */
  private static Shape circle(MachinedHole hole) {
    return new Shape.Circle(
        HOLES, new Xy(hole.spot().x(), hole.spot().y()), hole.bore().diameter() / 2, Fill.PAPER);
  }

  /** A box with a cross through it. */
  private void addKeepOut(KeepOut place) {
    Xy lowLeft = new Xy(place.corner().left(), place.corner().low());
    Xy lowRight = new Xy(place.right(), place.corner().low());
    Xy highRight = new Xy(place.right(), place.high());
    Xy highLeft = new Xy(place.corner().left(), place.high());
    shapes.add(
        new Shape.Outline(KEEP_OUT, List.of(lowLeft, lowRight, highRight, highLeft), Fill.PAPER));
    shapes.add(new Shape.Line(KEEP_OUT, lowLeft, highRight));
    shapes.add(new Shape.Line(KEEP_OUT, lowRight, highLeft));
  }

  private double paper(double length) {
    return length * scale;
  }

  private void addWays(List<Way> ways) {
    List<Xy> way = new ArrayList<>();
    boolean cutting = false;
    for (Way each : ways) {
      boolean shown = each.isAcross() && (each.isRapid() || !isInHole(each.to().flat()));
      if (shown) {
        if (way.isEmpty() || cutting == each.isRapid()) {
          addPath(way, cutting);
          way.add(onSheet(each.from().flat()));
        }
        cutting = !each.isRapid();
        way.add(onSheet(each.to().flat()));
      }
    }
    addPath(way, cutting);
  }

  private void addPath(List<Xy> way, boolean cutting) {
    if (way.size() > 1) {
      shapes.add(new Shape.Path(cutting ? CUTS : WAY, way));
    }
    way.clear();
  }

  private Xy onSheet(Xy place) {
    return place.plus(origin.x(), origin.y());
  }

  private boolean isInHole(Xy place) {
    Xy here = onSheet(place);
    return sheet.holes().stream()
        .anyMatch(
            hole -> {
              double dx = hole.spot().x() - here.x();
              double dy = hole.spot().y() - here.y();
              return dx * dx + dy * dy <= hole.bore().diameter() * hole.bore().diameter() / 4;
            });
  }

  /**
   * A filled right triangle in the corner, its legs along the edges, and its words outside; the
   * sheet's name stands at the far edge, where no words are.
   */
  private void addDatum() {
    Xy corner = new Xy(origin.x(), origin.y());
    double acrossLeg = paper(origin.x() > 0 ? -LEG : LEG);
    double upLeg = paper(origin.y() > 0 ? -LEG : LEG);
    shapes.add(
        new Shape.Area(
            TEXT, List.of(corner, corner.plus(acrossLeg, 0), corner.plus(0, upLeg)), Fill.INK));
    shapes.add(
        new Shape.Label(
            TEXT,
            corner.plus(0, origin.y() > 0 ? paper(CAPITALS + 1) : -paper(CAPITALS + 1)),
            "X0 Y0",
            CAPITALS,
            origin.x() > 0 ? TextAnchor.END : TextAnchor.START,
            0));
    shapes.add(
        new Shape.Label(
            TEXT,
            new Xy(
                sheet.stock().width() / 2,
                origin.y() > 0
                    ? -paper(CAPITALS + 1)
                    : sheet.stock().height() + paper(CAPITALS + 1)),
            sheet.mark() + ", " + sheet.faceUp().name() + " FACE UP",
            CAPITALS,
            TextAnchor.MIDDLE,
            0));
  }
}
