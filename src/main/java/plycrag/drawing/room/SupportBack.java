package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Xy;
import plycrag.drawing.pen.BackBand;
import plycrag.drawing.pen.FloorLine;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Piece;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.WallSupport;
import plycrag.units.Tape;

/**
 * What holds a run up, seen square from behind: where each station stands along the wall, braces
 * across the stations, and every anchor with its mark.
 */
public final class SupportBack {
  private static final Axonometry BEHIND = new Axonometry(180, 0);

  private final CheckedLayout checked;
  private final Layout layout;
  private final List<FacetLayout> run;
  private final FloorAxes axes;
  private final double left;
  private final List<PlacedMember> timbers;
  private final List<SeenBody> bodies = new ArrayList<>();
  private final Envelope box = new Envelope();
  private final Sketch sketch;
  private final PartMarks marks;

  private SupportBack(CheckedLayout checked, List<FacetLayout> run) {
    this.checked = checked;
    this.layout = checked.layout();
    this.run = run;
    this.axes = run.get(0).facet().plane().floorAxes();
    this.left = run.get(0).facet().plane().left();
    int number = layout.runs().indexOf(run);
    this.timbers = layout.standing().stream().filter(one -> one.run() == number).toList();
    for (FacetLayout facet : run) {
      facet.pieces().forEach(piece -> bodies.add(body(facet, piece)));
    }
    timbers.forEach(placed -> bodies.add(body(placed.member().mark(), false, inRun(placed))));
    bodies.forEach(body -> box.expandToInclude(body.silhouette().getEnvelopeInternal()));
    box.expandToInclude(box.getMinX(), 0);
    box.expandToInclude(-left - run.get(0).facet().width(), 0);
    this.sketch = new Sketch(Scale.fitting(box.getWidth(), box.getHeight()));
    this.marks = new PartMarks(sketch);
  }

  /**
   * The view of a run's support.
   *
   * @param run facets that stand on each other, from the floor up
   */
  public static Drawing of(CheckedLayout checked, List<FacetLayout> run) {
    return new SupportBack(checked, run).drawing();
  }

  private Solid inRun(PlacedMember placed) {
    return placed.body().mapped(axes::fromRoom);
  }

  private SeenBody body(FacetLayout facet, Piece piece) {
    double thickness = layout.wall().sheet().thickness();
    Solid solid =
        Solid.joining(piece.outline(), 0, piece.back(), thickness)
            .mapped(place -> axes.fromRoom(facet.facet().plane().toRoom(place)));
    return body(piece.mark(), true, solid);
  }

  private static SeenBody body(String mark, boolean sheet, Solid solid) {
    return SeenBody.of(mark, sheet, solid, List.of(), BEHIND);
  }

  private Drawing drawing() {
    marks.keepOff(BackBand.draw(sketch, box.getMinX(), box.getMaxX(), box.getMaxY()));
    marks.keepOff(FloorLine.draw(sketch, box.getMinX(), box.getMaxX()));
    drawBodies();
    int number = layout.runs().indexOf(run);
    marks.keepOff(HardwareOutlines.draw(sketch, layout, number, BEHIND::project));
    anchors().forEach(this::drawAnchor);
    Envelope written = marks.draw();
    box.expandToInclude(written.getMinX(), box.getMinY());
    box.expandToInclude(written.getMaxX(), Math.min(box.getMinY(), written.getMinY()));
    drawDimensions();
    Extent view = new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
    return new ViewPage(view, true).finish(checked, sketch, title(), notes());
  }

  private String title() {
    boolean only = layout.runs().size() == 1;
    return "Support, from behind" + (only ? "" : ", at facet " + run.get(0).facet().name());
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "BACK, SEEN FROM BEHIND: mirrored. Across from the wall's left edge, in "
            + layout.wall().tape().unit().plural()
            + ", both ways:");
    notes.add("the left side of each station, ends of what runs across, corners of what slants.");
    notes.add(HardwareOutlines.LEGEND);
    if (!anchors().isEmpty()) {
      notes.add("A slanting cross is an anchor. " + TitleLines.FIXING);
    }
    return notes;
  }

  private void drawBodies() {
    List<Geometry> seen = HiddenLines.seen(bodies, BEHIND);
    Set<String> ties = new TreeSet<>();
    timbers.stream()
        .filter(placed -> placed.member().role() == MemberRole.TIE)
        .forEach(placed -> ties.add(placed.member().mark()));
    for (int at = 0; at < bodies.size(); at++) {
      SeenBody body = bodies.get(at);
      List<LineString> lines = LineWork.lines(seen.get(at), sketch);
      lines.forEach(
          line -> LineWork.draw(sketch, body.sheet() ? Layers.CONTEXT : Layers.OUTLINE, line));
      if (body.sheet()) {
        marks.keepOff(lines);
      } else if (lines.isEmpty() && ties.contains(body.mark())) {
        body.edges().forEach(line -> LineWork.draw(sketch, Layers.BEHIND, line));
        marks.add(body.mark(), body.edges());
      } else {
        marks.add(body.mark(), lines);
      }
    }
  }

  private List<Anchor> anchors() {
    Set<String> held = new TreeSet<>();
    timbers.forEach(placed -> held.add(placed.member().mark()));
    run.forEach(facet -> facet.members().forEach(member -> held.add(member.mark())));
    return layout.support().map(WallSupport::anchors).orElse(List.of()).stream()
        .filter(anchor -> held.contains(anchor.member()))
        .toList();
  }

  private void drawAnchor(Anchor anchor) {
    Coordinate at = BEHIND.project(axes.fromRoom(anchor.place()));
    sketch.screw(new Xy(at.x, at.y));
    double arm = sketch.paper(0.6);
    marks.add(anchor.mark(), List.of(Shapes.line(at.x - arm, at.y - arm, at.x + arm, at.y + arm)));
  }

  private void drawDimensions() {
    Tape tape = layout.wall().tape();
    List<Double> across = new ArrayList<>();
    List<Double> up = new ArrayList<>();
    across.add(run.get(0).facet().width());
    for (PlacedMember placed : timbers) {
      Solid body = inRun(placed);
      List<Vector3> corners = new ArrayList<>(body.near());
      corners.addAll(body.far());
      boolean slants = StationTimber.isAcross(placed, body);
      MemberRole role = placed.member().role();
      if (slants || role.runsAlong()) {
        corners.forEach(corner -> across.add(corner.x() - left));
      } else {
        across.add(corners.stream().mapToDouble(Vector3::x).min().orElse(left) - left);
      }
      if (slants) {
        corners.forEach(corner -> up.add(corner.z()));
      } else if (role == MemberRole.BEAM || role == MemberRole.SILL) {
        up.add(corners.stream().mapToDouble(Vector3::z).min().orElse(0));
      }
    }
    double least = tape.unit().markingGrid() / 2;
    List<Double> beyond = across.stream().map(place -> -place).filter(by -> by > least).toList();
    across.removeIf(place -> place < least);
    up.removeIf(place -> place < least);
    RunningDimensions dimensions = new RunningDimensions(sketch, -1);
    dimensions.across(-left, box.getMinY(), Readings.of(across, tape, place -> -left - place));
    if (!beyond.isEmpty()) {
      new RunningDimensions(sketch, 1)
          .across(-left, box.getMinY(), Readings.of(beyond, tape, by -> by - left));
    }
    if (!up.isEmpty()) {
      dimensions.up(0, box.getMaxX(), Readings.of(up, tape, height -> height));
    }
  }
}
