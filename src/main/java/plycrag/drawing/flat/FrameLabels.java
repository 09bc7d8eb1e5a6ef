package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Trig;
import plycrag.layout.frame.Member;

/**
 * Writes its mark beside every member, along it, where neither timber nor lines of hardware nor
 * another mark is in the way: as near to its middle as may be, inside where it is broad enough on
 * paper. Where there is no such place, it stands further off, upright, with a leader to the member.
 */
final class FrameLabels {
  /** Places that are tried along a member, from its middle outward. */
  private static final int STEPS = 24;

  private static final double GAP = 0.7;

  /** How far off a mark with a leader may stand, in turn, mm on paper. */
  private static final double[] AWAY = {4, 5.5, 7, 9, 12, 16, 21, 27};

  private static final int WAYS = 16;

  /** A mark of hardware stands no further off than so many of them. */
  private static final int SHORT = 5;

  private final Sketch sketch;
  private final List<Member> members;
  private final Envelope frame = new Envelope();
  private final List<Envelope> written = new ArrayList<>();
  private final List<LineString> leaders = new ArrayList<>();
  private final Map<String, List<Polygon>> hardware;
  private final List<Polygon> outlines;

  /**
   * @param hardware the outlines of each piece by its mark
   */
  FrameLabels(Sketch sketch, List<Member> members, Map<String, List<Polygon>> hardware) {
    this.sketch = sketch;
    this.members = List.copyOf(members);
    this.hardware = hardware;
    this.outlines = hardware.values().stream().flatMap(List::stream).toList();
    members.forEach(member -> frame.expandToInclude(member.box()));
  }

  /** A place for a mark, and how much of it is hidden. */
  private record Spot(Xy middle, Envelope box, int hidden) {}

  void draw() {
    members.stream().sorted(Comparator.comparingDouble(Member::length)).forEach(this::draw);
    drawHardware();
  }

  private void draw(Member member) {
    Spot best = spots(member).stream().min(Comparator.comparingInt(Spot::hidden)).orElseThrow();
    Optional<Led> led = best.hidden() > 0 ? led(member) : Optional.empty();
    led.ifPresentOrElse(away -> lead(member.mark(), away), () -> write(member, best));
  }

  /** Marks each piece of hardware that has room for it beside the timber, with a leader. */
  private void drawHardware() {
    hardware.forEach(
        (mark, parts) ->
            leds(mark, parts.get(0).getCentroid().getCoordinate())
                .filter(this::isClear)
                .findFirst()
                .ifPresent(led -> lead(mark, led)));
  }

  private Stream<Led> leds(String mark, Coordinate foot) {
    return DoubleStream.of(AWAY)
        .limit(SHORT)
        .boxed()
        .flatMap(
            away ->
                IntStream.range(0, WAYS)
                    .mapToObj(way -> led(mark, foot, 360.0 * way / WAYS, sketch.paper(away))));
  }

  /** A place for a mark off its member, and the leader to that. */
  private record Led(Envelope box, LineString leader) {}

  private void lead(String mark, Led led) {
    written.add(led.box());
    leaders.add(led.leader());
    Xy middle = new Xy(led.box().centre().x, led.box().centre().y);
    Coordinate foot = led.leader().getCoordinateN(0);
    Coordinate end = led.leader().getCoordinateN(1);
    sketch.label(Layers.TEXT, middle, mark, Sketch.SMALL, TextAnchor.MIDDLE);
    sketch.line(Layers.DIMENSIONS, new Xy(foot.x, foot.y), new Xy(end.x, end.y));
    sketch.circle(Layers.DIMENSIONS, new Xy(foot.x, foot.y), sketch.paper(0.35));
  }

  /** The nearest place off a member where nothing is in the way of its mark. */
  private Optional<Led> led(Member member) {
    Direction along = member.direction();
    Direction.Span span = along.span(member.footprint());
    double middle = along.across().span(member.footprint()).middle();
    List<Led> tried = new ArrayList<>();
    for (double away : AWAY) {
      for (double part : new double[] {0, -0.15, 0.15, -0.3, 0.3}) {
        Coordinate foot = along.place(span.middle() + part * span.size(), middle);
        for (int way = 0; way < WAYS; way++) {
          tried.add(led(member.mark(), foot, 360.0 * way / WAYS, sketch.paper(away)));
        }
      }
    }
    return tried.stream().filter(this::isClear).findFirst();
  }

  private Led led(String mark, Coordinate foot, double way, double away) {
    double u = foot.x + away * Trig.cos(way);
    double v = foot.y + away * Trig.sin(way);
    Envelope box = new Envelope(new Coordinate(u, v));
    box.expandBy(
        sketch.paper(TextSize.width(mark, Sketch.SMALL)) / 2, sketch.paper(Sketch.SMALL) / 2);
    double endU = Math.max(box.getMinX(), Math.min(foot.x, box.getMaxX()));
    double endV = Math.max(box.getMinY(), Math.min(foot.y, box.getMaxY()));
    return new Led(box, Shapes.line(foot.x, foot.y, endU, endV));
  }

  private boolean isClear(Led led) {
    Envelope clear = new Envelope(led.box());
    clear.expandBy(sketch.paper(GAP));
    Polygon area = Shapes.rectangle(clear);
    return frame.contains(clear)
        && written.stream().noneMatch(clear::intersects)
        && written.stream().noneMatch(box -> led.leader().intersects(Shapes.rectangle(box)))
        && leaders.stream().noneMatch(area::intersects)
        && leaders.stream().noneMatch(led.leader()::intersects)
        && outlines.stream().map(Polygon::getEnvelopeInternal).noneMatch(clear::intersects)
        && members.stream().noneMatch(other -> other.footprint().intersects(area));
  }

  private void write(Member member, Spot best) {
    written.add(best.box());
    double angle = member.direction().angle();
    double turned = angle > 90 ? angle - 180 : angle;
    sketch.labelTurned(Layers.TEXT, best.middle(), member.mark(), turned);
  }

  /** From the middle outward; at every place on one side first, then on the other. */
  private List<Spot> spots(Member member) {
    Direction along = member.direction();
    Direction across = along.across();
    double middle = across.span(member.footprint()).middle();
    Direction.Span span = along.span(member.footprint());
    List<Double> sides = sides(member, middle);
    List<Spot> spots = new ArrayList<>();
    for (int step = 0; step <= STEPS; step++) {
      double off = span.size() / 2 * step / (STEPS + 1);
      for (double place : new double[] {span.middle() - off, span.middle() + off}) {
        for (double side : sides) {
          spots.add(spot(member, along.place(place, side)));
        }
      }
    }
    return spots;
  }

  private List<Double> sides(Member member, double middle) {
    if (member.breadth() >= sketch.paper(Sketch.SMALL + 0.4)) {
      return List.of(middle);
    }
    double off = member.breadth() / 2 + sketch.paper(Sketch.SMALL / 2 + GAP);
    return List.of(middle - off, middle + off);
  }

  private Spot spot(Member member, Coordinate place) {
    double width = sketch.paper(TextSize.width(member.mark(), Sketch.SMALL));
    double height = sketch.paper(Sketch.SMALL);
    Direction along = member.direction();
    double halfWidth = (Math.abs(along.u()) * width + Math.abs(along.v()) * height) / 2;
    double halfHeight = (Math.abs(along.v()) * width + Math.abs(along.u()) * height) / 2;
    Envelope box =
        new Envelope(
            place.x - halfWidth, place.x + halfWidth, place.y - halfHeight, place.y + halfHeight);
    return new Spot(new Xy(place.x, place.y), box, hidden(member, box));
  }

  /**
   * Words on words are worst, then words outside of the frame, then words on other timber or on
   * lines of hardware.
   */
  private int hidden(Member member, Envelope box) {
    Envelope clear = new Envelope(box);
    clear.expandBy(sketch.paper(GAP) / 2);
    int words =
        (int) written.stream().filter(clear::intersects).count()
            + (int) leaders.stream().filter(Shapes.rectangle(clear)::intersects).count();
    return 100 * words + (frame.contains(box) ? 0 : 10) + timber(member, box) + lines(box);
  }

  private int timber(Member member, Envelope box) {
    return (int)
        members.stream()
            .filter(other -> !other.equals(member) && other.box().intersects(box))
            .filter(other -> other.footprint().intersects(Shapes.rectangle(box)))
            .count();
  }

  private int lines(Envelope box) {
    return (int)
        outlines.stream()
            .filter(outline -> outline.getEnvelopeInternal().intersects(box))
            .filter(outline -> outline.getExteriorRing().intersects(Shapes.rectangle(box)))
            .count();
  }
}
