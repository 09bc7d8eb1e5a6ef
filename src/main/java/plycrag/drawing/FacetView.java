package plycrag.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.Xy;
import plycrag.layout.Axis;
import plycrag.layout.Face;
import plycrag.layout.FacetLayout;
import plycrag.layout.Insert;
import plycrag.layout.LaidSheet;
import plycrag.layout.Member;
import plycrag.layout.Screw;
import plycrag.layout.Seam;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/** A facet from one side: pieces, seams, inserts, screws, the timber behind. */
public final class FacetView {
  private final CheckedLayout checked;
  private final FacetLayout layout;
  private final Facet facet;
  private final Face side;
  private final FacetFrame frame;
  private final Sketch sketch;

  private FacetView(CheckedLayout checked, FacetLayout layout, Face side) {
    this.checked = checked;
    this.layout = layout;
    this.facet = layout.facet();
    this.side = side;
    this.frame = new FacetFrame(side == Face.BACK, facet.width());
    this.sketch = new Sketch(scale());
  }

  /** The view of a facet from a side. */
  public static Drawing of(CheckedLayout checked, FacetLayout layout, Face side) {
    return new FacetView(checked, layout, side).drawing();
  }

  private int scale() {
    return Scale.legible(facet.width(), facet.length(), Readings.leastStep(columns()));
  }

  private Drawing drawing() {
    tintTimber();
    labelPieces();
    sketch.outline(Layers.OUTLINE, Sketch.vertices(facet.outline().getExteriorRing(), frame));
    drawTimberBehind();
    layout.seams().forEach(this::drawSeam);
    drawSetback();
    layout.screws().stream().map(Screw::centre).map(frame::at).forEach(sketch::screw);
    layout.inserts().forEach(this::drawInsert);
    FindingRings.draw(checked, layout, frame, sketch);
    Datum.outside(sketch, frame.at(0, 0), sign());
    drawDimensions();
    if (side == Face.BACK) {
      drawBackBand();
    }
    Extent view = new Extent(0, lowest(), facet.width(), facet.length());
    return new ViewPage(view, frame.mirrored()).finish(checked, sketch, title(), notes());
  }

  /** Where the frame ends, below the facet or with it. */
  private double lowest() {
    return Math.min(0, layout.footing().plateLow());
  }

  private int sign() {
    return frame.mirrored() ? -1 : 1;
  }

  private String title() {
    return "Facet " + facet.name() + (side == Face.FRONT ? ", front" : ", back");
  }

  private List<String> notes() {
    Tape tape = checked.layout().wall().tape();
    String unit = "Read from the filled corner, in " + tape.unit().plural() + ".";
    return side == Face.FRONT
        ? List.of("FRONT. " + unit, "Timber behind is dashed; the setback is dotted.")
        : List.of(
            "BACK, SEEN FROM BEHIND: mirrored. " + unit, "The thin ring is the insert's flange.");
  }

  private void tintTimber() {
    if (side == Face.BACK) {
      for (Member member : layout.members()) {
        List<Xy> vertices = Sketch.vertices(member.footprint().getExteriorRing(), frame);
        sketch.area(Layers.TINT, vertices, Fill.TIMBER);
      }
    }
  }

  private void drawTimberBehind() {
    Layer layer = side == Face.FRONT ? Layers.BEHIND : Layers.PARTS;
    layout.members().forEach(member -> sketch.edges(layer, member.footprint(), frame));
  }

  private void drawSeam(Seam seam) {
    double half = seam.gap() / 2;
    double length = seam.axis() == Axis.UP ? facet.length() : facet.width();
    drawSeamSide(seam, seam.middle() - half, length, Layers.OUTLINE);
    if (seam.gap() > 0) {
      drawSeamSide(seam, seam.middle() + half, length, Layers.DIMENSIONS);
    }
  }

  private void drawSeamSide(Seam seam, double place, double length, Layer layer) {
    boolean up = seam.axis() == Axis.UP;
    sketch.line(
        layer,
        up ? frame.at(place, 0) : frame.at(0, place),
        up ? frame.at(place, length) : frame.at(length, place));
  }

  private void drawSetback() {
    double setback = checked.layout().wall().inserts().setback();
    facet
        .setback(setback)
        .ifPresent(
            area -> sketch.outline(Layers.SETBACK, Sketch.vertices(area.getExteriorRing(), frame)));
  }

  private void drawInsert(Insert insert) {
    Xy centre = frame.at(insert.centre());
    sketch.hole(centre, checked.layout().wall().inserts().hole());
    if (side == Face.BACK) {
      sketch.circle(Layers.FLANGES, centre, checked.layout().wall().inserts().flange() / 2);
    }
  }

  private void labelPieces() {
    PieceLabel label =
        new PieceLabel(
            FreeSpot.on(layout, FindingRings.boxes(checked, facet.name(), sketch)), frame, sketch);
    for (LaidSheet sheet : checked.layout().sheets()) {
      if (sheet.facet().equals(facet.name())) {
        label.draw(sheet);
      }
    }
  }

  private void drawDimensions() {
    Tape tape = checked.layout().wall().tape();
    RunningDimensions dimensions = new RunningDimensions(sketch, sign());
    List<Double> across = new ArrayList<>(columns());
    across.add(facet.width());
    List<Double> up = new ArrayList<>(rows());
    up.add(facet.length());
    double datum = frame.at(0, 0).x();
    dimensions.across(datum, lowest(), Readings.of(across, tape, u -> frame.at(u, 0).x()));
    dimensions.up(0, datum, Readings.of(up, tape, v -> v));
  }

  private Collection<Double> columns() {
    return layout.inserts().stream().map(insert -> insert.centre().getX()).distinct().toList();
  }

  private Collection<Double> rows() {
    return layout.inserts().stream().map(insert -> insert.centre().getY()).distinct().toList();
  }

  private void drawBackBand() {
    double low = facet.length() + sketch.paper(1);
    double height = sketch.paper(3);
    double step = sketch.paper(2);
    for (double x = 0; x + height <= facet.width(); x += step) {
      sketch.line(Layers.CONTEXT, new Xy(x, low), new Xy(x + height, low + height));
    }
  }
}
