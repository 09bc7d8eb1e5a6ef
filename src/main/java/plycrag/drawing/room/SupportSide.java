package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Xy;
import plycrag.drawing.pen.FacetFrame;
import plycrag.drawing.pen.FloorLine;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.units.Tape;

/**
 * A station of what holds a run up, seen from the climber's left, with everything a tape needs to
 * set it out: heights above the floor, and ways out from its hindmost side.
 */
public final class SupportSide {
  /** How far the floor is drawn beyond the timber on paper, mm. */
  private static final double FLOOR = 4;

  private final CheckedLayout checked;
  private final List<FacetLayout> run;
  private final double thickness;
  private final List<StationTimber> timbers;
  private final Envelope box = new Envelope(0, 0, 0, 0);
  private final Sketch sketch;
  private final PartMarks marks;

  private SupportSide(CheckedLayout checked, List<FacetLayout> run) {
    this.checked = checked;
    this.run = run;
    Layout layout = checked.layout();
    this.thickness = layout.wall().sheet().thickness();
    this.timbers = StationTimber.of(layout, layout.runs().indexOf(run));
    timbers.forEach(timber -> box.expandToInclude(timber.profile().getEnvelopeInternal()));
    for (FacetLayout facet : run) {
      SideProfile profile = new SideProfile(facet, thickness);
      profile.sheets().forEach(this::include);
      profile.cutAcross().forEach(member -> profile.member(member).forEach(this::include));
    }
    this.sketch = new Sketch(Scale.fitting(box.getWidth(), box.getHeight()));
    this.marks = new PartMarks(sketch);
  }

  private void include(Xy place) {
    box.expandToInclude(place.x(), place.y());
  }

  /**
   * The view of a run's support.
   *
   * @param run facets that stand on each other, from the floor up
   */
  public static Drawing of(CheckedLayout checked, List<FacetLayout> run) {
    return new SupportSide(checked, run).drawing();
  }

  /** Whether anything holds a run up, by its number from 0. */
  public static boolean isNeeded(CheckedLayout checked, int run) {
    return checked.layout().standing().stream().anyMatch(placed -> placed.run() == run);
  }

  private Drawing drawing() {
    double margin = sketch.paper(FLOOR);
    marks.keepOff(FloorLine.draw(sketch, box.getMinX() - margin, box.getMaxX() + margin));
    run.forEach(this::drawFrame);
    timbers.forEach(this::drawTimber);
    Layout layout = checked.layout();
    marks.keepOff(
        HardwareOutlines.draw(
            sketch,
            layout,
            layout.runs().indexOf(run),
            place -> new Coordinate(place.y(), place.z())));
    box.expandToInclude(marks.draw());
    drawDimensions();
    Extent view = new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
    return new ViewPage(view, false).finish(checked, sketch, title(), notes());
  }

  private String title() {
    boolean only = checked.layout().runs().size() == 1;
    return "Support, from the side" + (only ? "" : ", at facet " + run.get(0).facet().name());
  }

  private List<String> notes() {
    Tape tape = checked.layout().wall().tape();
    String from =
        rear() < 0
            ? "from the hindmost side of the support, to the face's foot as well"
            : "from the foot of the climbing face";
    return List.of(
        "SUPPORT, SEEN FROM THE LEFT, in " + tape.unit().plural() + ". Thin: the wall it holds.",
        "Up from the floor: the underside of what lies level, both ends of what stands, corners of",
        "what slants. Across " + from + ".",
        HardwareOutlines.LEGEND);
  }

  /** The wall itself, thin. */
  private void drawFrame(FacetLayout facet) {
    SideProfile profile = new SideProfile(facet, thickness);
    drawThin(profile.sheets());
    profile.cutAcross().forEach(member -> drawThin(profile.member(member)));
  }

  private void drawThin(List<Xy> corners) {
    sketch.closed(Layers.CONTEXT, corners);
    marks.keepOffWay(corners);
  }

  private void drawTimber(StationTimber timber) {
    List<Xy> corners =
        Sketch.vertices(timber.profile().getExteriorRing(), new FacetFrame(false, 0));
    if (timber.role().runsAlong()) {
      sketch.area(Layers.TINT, corners, Fill.TIMBER);
    }
    sketch.closed(Layers.OUTLINE, corners);
    marks.add(timber.words(), Shapes.edges(timber.profile()));
  }

  /** The hindmost side of the support, or the foot of the climbing face where that is further. */
  private double rear() {
    double rear = 0;
    for (StationTimber timber : timbers) {
      rear = Math.min(rear, timber.profile().getEnvelopeInternal().getMinX());
    }
    return rear;
  }

  private void drawDimensions() {
    Tape tape = checked.layout().wall().tape();
    List<Double> heights = new ArrayList<>();
    List<Double> ways = new ArrayList<>();
    double rear = rear();
    ways.add(-rear);
    for (StationTimber timber : timbers) {
      StationReadings.addHeights(timber, heights);
      StationReadings.addWays(timber, rear, ways);
    }
    heights.removeIf(height -> height < tape.unit().markingGrid() / 2);
    ways.removeIf(way -> way < tape.unit().markingGrid() / 2);
    RunningDimensions dimensions = new RunningDimensions(sketch, 1);
    if (!heights.isEmpty()) {
      dimensions.up(0, box.getMinX(), Readings.of(heights, tape, height -> height));
    }
    if (!ways.isEmpty()) {
      dimensions.across(rear, box.getMinY(), Readings.of(ways, tape, way -> way + rear));
    }
  }
}
