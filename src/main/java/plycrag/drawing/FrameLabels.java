package plycrag.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.layout.Member;

/**
 * Writes its mark beside every member, along it, where neither timber nor another mark is in the
 * way: as near to its middle as may be, inside where it is broad enough on paper.
 */
final class FrameLabels {
  /** Places that are tried along a member, from its middle outward. */
  private static final int STEPS = 24;

  private static final double GAP = 0.7;

  private final Sketch sketch;
  private final List<Member> members;
  private final Envelope frame = new Envelope();
  private final List<Envelope> written = new ArrayList<>();

  FrameLabels(Sketch sketch, List<Member> members) {
    this.sketch = sketch;
    this.members = List.copyOf(members);
    members.forEach(member -> frame.expandToInclude(member.box()));
  }

  /** A place for a mark, and how much of it is hidden. */
  private record Spot(Xy middle, Envelope box, int hidden) {}

  void draw() {
    members.stream().sorted(Comparator.comparingDouble(Member::length)).forEach(this::draw);
  }

  private void draw(Member member) {
    Spot best = spots(member).stream().min(Comparator.comparingInt(Spot::hidden)).orElseThrow();
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

  /** Words on words are worst, then words outside of the frame, then words on other timber. */
  private int hidden(Member member, Envelope box) {
    Envelope clear = new Envelope(box);
    clear.expandBy(sketch.paper(GAP) / 2);
    int words = (int) written.stream().filter(clear::intersects).count();
    int timber =
        (int)
            members.stream()
                .filter(other -> !other.equals(member) && other.box().intersects(box))
                .filter(other -> other.footprint().intersects(Shapes.rectangle(box)))
                .count();
    return 100 * words + (frame.contains(box) ? 0 : 10) + timber;
  }
}
