package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.BackBand;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.FacetFrame;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TapeCorners;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.StraightLine;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.SheetFace;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Seam;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Zone;

/** A facet from one side: pieces, seams, inserts, screws, the timber behind. */
public final class FacetView {
  /** At a smaller scale marks and rings would lie on each other; the page is larger instead. */
  private static final int SMALLEST_SCALE = 20;

  private final CheckedLayout checked;
  private final FacetLayout layout;
  private final Facet facet;
  private final SheetFace side;
  private final FacetFrame frame;
  private final Sketch sketch;
  private final FreeSpot spots;
  private final OpeningNames openings;

  private FacetView(CheckedLayout checked, FacetLayout layout, SheetFace side) {
    this.checked = checked;
    this.layout = layout;
    this.facet = layout.facet();
    this.side = side;
    this.frame = new FacetFrame(side == SheetFace.BACK, facet.width());
    this.sketch = new Sketch(scale());
    this.spots = FreeSpot.on(layout, taken());
    this.openings = new OpeningNames(facet, spots, sketch);
  }

  /** The view of a facet from a side. */
  public static Drawing of(CheckedLayout checked, FacetLayout layout, SheetFace side) {
    return new FacetView(checked, layout, side).drawing();
  }

  /** What is drawn beside the layout: the rings of findings, and zones with what is in them. */
  private List<Envelope> taken() {
    List<Envelope> taken = new ArrayList<>(FindingRings.boxes(checked, layout, sketch));
    setback().forEach(area -> FreeSpot.addEdges(area, taken));
    if (side == SheetFace.FRONT) {
      checked.layout().wall().zones(facet).forEach(one -> FreeSpot.addEdges(one.shape(), taken));
      layout.screwPoints().forEach(point -> taken.add(point.centre().getEnvelopeInternal()));
    }
    return taken;
  }

  private int scale() {
    int legible = Scale.legible(facet.width(), facet.length(), Readings.leastStep(columns()));
    int largest = Scale.largest(facet.width(), facet.length());
    return Math.max(largest, Math.min(SMALLEST_SCALE, legible));
  }

  private Drawing drawing() {
    tintTimber();
    labelPieces();
    drawOutline();
    drawTimberBehind();
    layout.seams().forEach(this::drawSeam);
    drawSetback();
    drawZones();
    layout.screws().stream().map(Screw::centre).map(frame::at).forEach(sketch::screw);
    layout.inserts().forEach(this::drawInsert);
    List<Envelope> words = new ArrayList<>();
    openings.all().forEach(name -> words.add(name.box()));
    if (side == SheetFace.BACK) {
      words.add(BackBand.draw(sketch, 0, facet.width(), facet.length()));
    }
    FindingRings.draw(checked, layout, words, frame, sketch);
    Datum.outside(sketch, frame.at(0, 0), sign());
    drawDimensions();
    return new ViewPage(extent(), frame.mirrored()).finish(checked, sketch, title(), notes());
  }

  /** The facet, and names of openings that found room only beside it. */
  private Extent extent() {
    Envelope seen = new Envelope(0, facet.width(), lowest(), facet.length());
    for (OpeningNames.Named name : openings.all()) {
      Xy low = frame.at(name.box().getMinX(), name.box().getMinY());
      Xy high = frame.at(name.box().getMaxX(), name.box().getMaxY());
      seen.expandToInclude(low.x(), low.y());
      seen.expandToInclude(high.x(), high.y());
    }
    return new Extent(seen.getMinX(), seen.getMinY(), seen.getMaxX(), seen.getMaxY());
  }

  private void drawOutline() {
    Polygon outline = facet.outline();
    sketch.outline(Layers.OUTLINE, Sketch.vertices(outline.getExteriorRing(), frame));
    for (int hole = 0; hole < outline.getNumInteriorRing(); hole++) {
      sketch.outline(Layers.OUTLINE, Sketch.vertices(outline.getInteriorRingN(hole), frame));
    }
    for (OpeningNames.Named name : openings.all()) {
      Coordinate middle = name.box().centre();
      Xy at = frame.at(middle.x, middle.y);
      sketch.label(Layers.TEXT, at, name.cutout().name(), Sketch.SMALL, TextAnchor.MIDDLE);
    }
  }

  /** Where the frame ends, below the facet or with it. */
  private double lowest() {
    return Math.min(0, layout.footing().plateLow());
  }

  private int sign() {
    return frame.mirrored() ? -1 : 1;
  }

  private String title() {
    return "Facet " + facet.name() + (side == SheetFace.FRONT ? ", front" : ", back");
  }

  private List<String> notes() {
    Tape tape = checked.layout().wall().tape();
    String unit = "Read from the filled corner, in " + tape.unit().plural() + ".";
    return side == SheetFace.FRONT
        ? List.of("FRONT. " + unit, "Timber behind is dashed; " + dotted())
        : List.of(
            "BACK, SEEN FROM BEHIND: mirrored. " + unit, "The thin ring is the insert's flange.");
  }

  private String dotted() {
    boolean hasZones = !checked.layout().wall().zones(facet).isEmpty();
    String lines = hasZones ? "the setback and zones are dotted." : "the setback is dotted.";
    return layout.screwPoints().isEmpty()
        ? lines
        : lines + " A small diamond is a place for a screw.";
  }

  private void tintTimber() {
    if (side == SheetFace.BACK) {
      for (Member member : layout.members()) {
        List<Xy> vertices = Sketch.vertices(member.footprint().getExteriorRing(), frame);
        sketch.area(Layers.TINT, vertices, Fill.TIMBER);
      }
    }
  }

  private void drawTimberBehind() {
    Layer layer = side == SheetFace.FRONT ? Layers.BEHIND : Layers.PARTS;
    layout.members().forEach(member -> sketch.edges(layer, member.footprint(), frame));
  }

  private void drawSeam(Seam seam) {
    double half = seam.gap() / 2;
    drawSeamSide(seam, seam.middle() - half, Layers.OUTLINE);
    if (seam.gap() > 0) {
      drawSeamSide(seam, seam.middle() + half, Layers.DIMENSIONS);
    }
  }

  private void drawSeamSide(Seam seam, double place, Layer layer) {
    StraightLine line =
        new StraightLine(seam.axis() == Axis.UP ? Direction.UP : Direction.LEVEL, place);
    for (Direction.Span span : line.within(facet.outline())) {
      double low = Math.max(span.low(), seam.low());
      double high = Math.min(span.high(), seam.high());
      if (low < high) {
        sketch.line(layer, at(seam, low, place), at(seam, high, place));
      }
    }
  }

  private Xy at(Seam seam, double along, double place) {
    return seam.axis() == Axis.UP ? frame.at(place, along) : frame.at(along, place);
  }

  private List<Polygon> setback() {
    return facet.setback(checked.layout().wall().inserts().setback());
  }

  private void drawSetback() {
    for (Polygon area : setback()) {
      sketch.outline(Layers.SETBACK, Sketch.vertices(area.getExteriorRing(), frame));
      for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
        sketch.outline(Layers.SETBACK, Sketch.vertices(area.getInteriorRingN(hole), frame));
      }
    }
  }

  /** Zones on the side that is climbed on, and the screw points in them. */
  private void drawZones() {
    if (side == SheetFace.FRONT) {
      for (Zone zone : checked.layout().wall().zones(facet)) {
        for (Polygon part : Shapes.sharedAreas(zone.shape(), facet.outline())) {
          sketch.outline(Layers.ZONES, Sketch.vertices(part.getExteriorRing(), frame));
        }
      }
      layout.screwPoints().forEach(point -> sketch.screwPoint(frame.at(point.centre())));
    }
  }

  private void drawInsert(Insert insert) {
    Xy centre = frame.at(insert.centre());
    sketch.hole(centre, checked.layout().wall().inserts().body().hole());
    if (side == SheetFace.BACK) {
      sketch.circle(Layers.FLANGES, centre, checked.layout().wall().inserts().body().flange() / 2);
    }
  }

  private void labelPieces() {
    PieceLabel label = new PieceLabel(spots, frame, sketch);
    for (LaidSheet sheet : checked.layout().sheets()) {
      for (LaidPiece laid : sheet.pieces()) {
        if (laid.facet().equals(facet.name())) {
          label.draw(laid.piece(), sheet.mark());
        }
      }
    }
  }

  private void drawDimensions() {
    Tape tape = checked.layout().wall().tape();
    RunningDimensions dimensions = new RunningDimensions(sketch, sign());
    List<Double> across = new ArrayList<>(columns());
    List<Double> up = new ArrayList<>(rows());
    for (Coordinate corner : TapeCorners.of(facet.outline())) {
      across.add(corner.x);
      up.add(corner.y);
    }
    across.removeIf(place -> place <= 0);
    up.removeIf(place -> place <= 0);
    double datum = frame.at(0, 0).x();
    dimensions.across(datum, lowest(), Readings.of(across, tape, u -> frame.at(u, 0).x()));
    dimensions.up(0, datum, Readings.of(up, tape, v -> v));
  }

  private Collection<Double> columns() {
    return inLines().map(insert -> insert.centre().getX()).distinct().toList();
  }

  private Collection<Double> rows() {
    return inLines().map(insert -> insert.centre().getY()).distinct().toList();
  }

  /** Scattered inserts stand in no lines; their places are read from the marking out. */
  private Stream<Insert> inLines() {
    return layout.inserts().stream().filter(insert -> insert.column() > 0);
  }
}
