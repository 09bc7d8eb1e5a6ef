package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.FacetFrame;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Shapes;
import plycrag.layout.joints.Gusset;
import plycrag.layout.sheets.LaidGusset;
import plycrag.solve.fixing.FacePlace;
import plycrag.solve.fixing.GussetFit;
import plycrag.solve.fixing.GussetScrew;
import plycrag.stock.ScrewDrilling;
import plycrag.units.Tape;

/**
 * A gusset as one looks at it on the frame: where its screws go, and where the edges of the timber
 * under it run, so that it can be marked before it is held up.
 */
public final class GussetView {
  /** How much of the timber is shown around it, mm. */
  private static final double AROUND = 50;

  /** So far apart are the places of most of its screws, mm. */
  private static final double LEGIBLE = 10;

  /** Around words on paper, mm. */
  private static final double CLEAR = 0.8;

  /** As far apart as makes two gussets two, in parts of a millimetre. */
  private static final double PARTS = 10;

  private final CheckedLayout checked;
  private final List<LaidGusset> alike;
  private final GussetFit fit;
  private final Tape tape;
  private final Sketch sketch;
  private final Envelope window;
  private final List<Envelope> taken = new ArrayList<>();

  private GussetView(CheckedLayout checked, List<LaidGusset> alike) {
    this.checked = checked;
    this.alike = alike;
    this.fit = alike.get(0).gusset().fit();
    this.tape = checked.layout().wall().tape();
    this.window = new Envelope(0, fit.size().along(), 0, fit.size().across());
    window.expandBy(AROUND);
    this.sketch = new Sketch(Scale.legible(window.getWidth(), window.getHeight(), LEGIBLE));
  }

  /** The view of gussets that are made alike. */
  public static Drawing of(CheckedLayout checked, List<LaidGusset> alike) {
    return new GussetView(checked, alike).drawing();
  }

  /** All gussets, those that are made alike together, each in the order of their marks. */
  public static List<List<LaidGusset>> alike(CheckedLayout checked) {
    Map<Shape, List<LaidGusset>> groups = new LinkedHashMap<>();
    for (LaidGusset laid : checked.layout().offcuts().gussets()) {
      groups.computeIfAbsent(shape(laid), unseen -> new ArrayList<>()).add(laid);
    }
    return List.copyOf(groups.values());
  }

  private record Shape(Gusset.Side side, List<Long> numbers) {}

  /** All of its numbers, in an order that tells nothing of marks. */
  private static Shape shape(LaidGusset laid) {
    GussetFit fit = laid.gusset().fit();
    List<FacePlace> places = new ArrayList<>();
    places.add(fit.size());
    places.add(new FacePlace(fit.diameter(), fit.screwLength()));
    fit.screws().forEach(screw -> places.add(screw.spot()));
    fit.timbers().values().forEach(places::addAll);
    List<Long> shape = new ArrayList<>();
    for (FacePlace place : places) {
      shape.add(Math.round(place.along() * PARTS));
      shape.add(Math.round(place.across() * PARTS));
    }
    return new Shape(laid.gusset().side(), shape);
  }

  private Drawing drawing() {
    DetailWindow shown = new DetailWindow(window, sketch);
    for (List<FacePlace> corners : fit.timbers().values()) {
      List<Xy> face = corners.stream().map(GussetView::at).toList();
      shown.draw(Layers.BEHIND, face);
      FreeSpot.addEdges(polygon(corners), taken);
    }
    Polygon outline = Shapes.rectangle(new Envelope(0, fit.size().along(), 0, fit.size().across()));
    sketch.outline(
        Layers.OUTLINE, Sketch.vertices(outline.getExteriorRing(), new FacetFrame(false, 0)));
    FreeSpot.addEdges(outline, taken);
    for (GussetScrew screw : fit.screws()) {
      sketch.screw(at(screw.spot()));
      Envelope head = new Envelope(coordinate(screw.spot()));
      head.expandBy(sketch.paper(2));
      taken.add(head);
    }
    fit.timbers().forEach(this::name);
    dimension();
    Extent extent =
        new Extent(window.getMinX(), window.getMinY(), window.getMaxX(), window.getMaxY());
    String title = "Gusset " + String.join(", ", marks());
    return new ViewPage(extent, false).finish(checked, sketch, title, notes());
  }

  private List<String> marks() {
    return alike.stream().map(laid -> laid.gusset().mark()).toList();
  }

  private static Xy at(FacePlace place) {
    return new Xy(place.along(), place.across());
  }

  private static Coordinate coordinate(FacePlace place) {
    return new Coordinate(place.along(), place.across());
  }

  private static Polygon polygon(List<FacePlace> corners) {
    return Shapes.polygon(corners.stream().map(GussetView::coordinate).toList());
  }

  /** The mark of a member on what is seen of it, where there is room. */
  private void name(String mark, List<FacePlace> corners) {
    Geometry seen = Shapes.shared(polygon(corners), Shapes.rectangle(window));
    double length = sketch.paper(TextSize.width(mark, Sketch.SMALL) + 2 * CLEAR);
    double height = sketch.paper(Sketch.SMALL + 2 * CLEAR);
    Shapes.areas(seen).stream()
        .flatMap(area -> new FreeSpot(taken).in(area, length, height).stream())
        .findFirst()
        .ifPresent(
            spot -> {
              sketch.label(Layers.TEXT, spot, mark, Sketch.SMALL, TextAnchor.MIDDLE);
              taken.add(
                  new Envelope(
                      spot.x() - length / 2,
                      spot.x() + length / 2,
                      spot.y() - height / 2,
                      spot.y() + height / 2));
            });
  }

  /** Of its screws and its sides, from its lower left corner. */
  private void dimension() {
    TreeSet<Double> across = new TreeSet<>(List.of(0.0, fit.size().along()));
    TreeSet<Double> up = new TreeSet<>(List.of(0.0, fit.size().across()));
    for (GussetScrew screw : fit.screws()) {
      across.add(screw.spot().along());
      up.add(screw.spot().across());
    }
    RunningDimensions dimensions = new RunningDimensions(sketch, 1);
    dimensions.across(0, window.getMinY(), Readings.of(across, tape, place -> place));
    dimensions.up(0, window.getMinX(), Readings.of(up, tape, place -> place));
  }

  private List<String> notes() {
    ScrewDrilling holes = ScrewDrilling.forGusset(fit.diameter());
    List<String> notes = new ArrayList<>();
    notes.add(
        "Plywood of "
            + tape.size(checked.layout().wall().sheet().thickness())
            + ", on the "
            + alike.get(0).gusset().side().words()
            + " of the timber as one climbs, which is seen here; its sides along and across "
            + fit.parallelTo()
            + ".");
    notes.add(
        fit.screws().size()
            + " screws of "
            + tape.bareSize(fit.diameter())
            + " x "
            + tape.size(fit.screwLength())
            + "; drill "
            + tape.size(holes.clearance())
            + " through the plywood and "
            + tape.size(holes.pilot())
            + " into the timber.");
    notes.add("Mark on it where the edges of the timber cross its sides, and lay it on by that:");
    fit.timbers().forEach((mark, corners) -> notes.addAll(crossings(mark, corners)));
    for (LaidGusset laid : alike) {
      Gusset gusset = laid.gusset();
      notes.add(
          gusset.mark()
              + " over "
              + String.join(", ", gusset.members())
              + ", from "
              + laid.from()
              + "; it holds "
              + String.join(", ", gusset.joints())
              + ".");
    }
    return notes;
  }

  /** Where the edges of a member cross the sides; nothing for one that lies within them. */
  private List<String> crossings(String mark, List<FacePlace> corners) {
    List<String> sides = new ArrayList<>();
    addSide(sides, "left", crossings(corners, 0, false));
    addSide(sides, "right", crossings(corners, fit.size().along(), false));
    addSide(sides, "lower", crossings(corners, 0, true));
    addSide(sides, "upper", crossings(corners, fit.size().across(), true));
    return sides.isEmpty() ? List.of() : List.of(mark + ": " + String.join("; ", sides) + ".");
  }

  private void addSide(List<String> sides, String side, Set<Double> places) {
    if (!places.isEmpty()) {
      String readings =
          places.stream()
              .map(place -> tape.reading(tape.snap(place)))
              .collect(Collectors.joining(", "));
      sides.add(side + " side at " + readings);
    }
  }

  /** Along one side of the rectangle, where the edges of an area cross it. */
  private Set<Double> crossings(List<FacePlace> corners, double side, boolean level) {
    double end = level ? fit.size().along() : fit.size().across();
    TreeSet<Double> places = new TreeSet<>();
    for (int at = 0; at < corners.size(); at++) {
      FacePlace from = corners.get(at);
      FacePlace to = corners.get((at + 1) % corners.size());
      double one = (level ? from.across() : from.along()) - side;
      double other = (level ? to.across() : to.along()) - side;
      if (one * other < 0) {
        FacePlace crossing = from.toward(to, one / (one - other));
        double place = level ? crossing.along() : crossing.across();
        if (place > 0 && place < end) {
          places.add(place);
        }
      }
    }
    return places;
  }
}
