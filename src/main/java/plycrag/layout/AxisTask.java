package plycrag.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.layout.setout.Bay;
import plycrag.layout.setout.Keepout;
import plycrag.layout.setout.Limits;
import plycrag.layout.setout.Line;
import plycrag.layout.setout.Task;
import plycrag.params.ClearanceParameters;
import plycrag.params.InsertParameters;
import plycrag.units.Tape;
import plycrag.wall.Wall;

/**
 * What lies across the columns or the rows of a facet: its edges, its seams, its members, and those
 * of other facets that reach behind it. A member that crosses only some of the lines keeps all of
 * them off, as if it were whole; what that costs is mended line by line afterwards ({@link
 * Salvage}).
 */
final class AxisTask {
  private static final double TOLERANCE = 1e-6;

  private final Wall wall;
  private final FramePlan plan;
  private final FramedFacet frame;
  private final List<Neighbour> neighbours;
  private final Axis lines;
  private final InsertParameters inserts;
  private final ClearanceParameters clearance;

  /**
   * The task of one axis.
   *
   * @param lines the way the lines run
   */
  AxisTask(Wall wall, FramePlan plan, FramedFacet frame, List<Neighbour> neighbours, Axis lines) {
    this.wall = wall;
    this.plan = plan;
    this.frame = frame;
    this.neighbours = neighbours;
    this.lines = lines;
    this.inserts = wall.inserts();
    this.clearance = wall.clearance();
  }

  /** A member across the axis, and whether it may move. */
  record Crossing(plycrag.layout.setout.Member member, boolean isMovable) {}

  /** The task for lines at given places, ascending, mm. */
  Task task(List<Double> wanted) {
    List<Line> named = new ArrayList<>();
    for (int at = 0; at < wanted.size(); at++) {
      named.add(new Line((lines == Axis.UP ? "column " : "row ") + (at + 1), wanted.get(at)));
    }
    List<plycrag.layout.setout.Member> fixed = new ArrayList<>();
    List<Bay> bays = new ArrayList<>();
    List<plycrag.layout.setout.Member> free = new ArrayList<>();
    for (Crossing crossing : keepingOffEachOther(crossings())) {
      if (crossing.isMovable()) {
        free.add(crossing.member());
      } else {
        if (!free.isEmpty()) {
          bays.add(new Bay(fixed.size() - 1, greatestSpacing(), free));
          free = new ArrayList<>();
        }
        fixed.add(crossing.member());
      }
    }
    return new Task(named, keepouts(), fixed, bays, limits());
  }

  /** Whether the lines are to mirror each other. */
  boolean isMirrored() {
    return lines == Axis.UP && inserts.symmetry() == InsertParameters.Symmetry.LEFT_RIGHT;
  }

  /** The facet's size across the lines, mm. */
  double extent() {
    return lines.other().size(frame.facet().boundary().getEnvelopeInternal());
  }

  /** The middles of the movable members as they are laid out first, mm. */
  List<Double> movable() {
    return crossings().stream()
        .filter(Crossing::isMovable)
        .map(crossing -> crossing.member().centre())
        .toList();
  }

  private Limits limits() {
    return new Limits(
        wall.tape().unit().markingGrid(),
        Math.max(flangeToTimber(), boltToTimber()),
        toLine(),
        inserts.greatestMove());
  }

  private double flangeToTimber() {
    return inserts.flange() / 2 + clearance.insertToTimber();
  }

  private double boltToTimber() {
    return inserts.boltZone() / 2 + clearance.boltToTimber();
  }

  /** Of neighbouring columns only every second one has an insert in the same row, in an offset. */
  private double toLine() {
    double reach = inserts.flange() + clearance.insertToInsert();
    boolean alternates =
        inserts.pattern() == InsertParameters.Pattern.OFFSET
            && Math.min(inserts.pitchUp(), inserts.topPitchUp()) >= reach;
    return lines == Axis.UP && alternates ? reach / 2 : reach;
  }

  private double greatestSpacing() {
    return lines == Axis.UP
        ? wall.frame().studSpacing()
        : wall.frame().blockingSpacing().orElseThrow();
  }

  /** Members right across, ascending; the outermost are fixed. */
  private List<Crossing> crossings() {
    List<Crossing> crossings = new ArrayList<>(lines == Axis.UP ? studs() : levels());
    crossings.sort(Comparator.comparingDouble(crossing -> crossing.member().centre()));
    if (!crossings.isEmpty() && crossings.get(0).isMovable()) {
      crossings.add(0, end(low(frameBox())));
    }
    if (!crossings.isEmpty() && crossings.get(crossings.size() - 1).isMovable()) {
      crossings.add(end(high(frameBox())));
    }
    return crossings;
  }

  /** Members that overlap are none of the set-out's business: a rule tells of them. */
  private static List<Crossing> keepingOffEachOther(List<Crossing> crossings) {
    for (int next = 1; next < crossings.size(); next++) {
      Crossing low = crossings.get(next - 1);
      Crossing high = crossings.get(next);
      double room =
          high.member().centre()
              - high.member().halfBreadth()
              - low.member().centre()
              - low.member().halfBreadth();
      if (room < -TOLERANCE && (low.isMovable() || high.isMovable())) {
        return crossings.stream().map(one -> new Crossing(one.member(), false)).toList();
      }
    }
    return crossings;
  }

  /** Where a frame ends in a point or a slant. */
  private static Crossing end(double place) {
    return new Crossing(new plycrag.layout.setout.Member("the end", place, 0), false);
  }

  private Envelope frameBox() {
    Envelope box = new Envelope();
    frame.members().forEach(member -> box.expandToInclude(member.box()));
    return box;
  }

  private List<Crossing> studs() {
    return plan.studs().studs().stream()
        .map(
            stud ->
                crossing(
                    stud.hold() == Hold.OPENING ? "trimmer" : "stud",
                    stud.low(),
                    stud.high(),
                    plan.isMovable(stud)))
        .toList();
  }

  private List<Crossing> levels() {
    List<Crossing> levels = new ArrayList<>();
    for (Member member : frame.members()) {
      Crossing plate = crossing("plate", low(member.box()), high(member.box()), false);
      if (member.role() == Role.PLATE && !levels.contains(plate)) {
        levels.add(plate);
      }
    }
    for (BlockingRows.Row row : plan.rows().rows()) {
      Backing backing = row.backing();
      Crossing blocking = crossing("blocking", backing.low(), backing.high(), row.isFree());
      if (!levels.contains(blocking)) {
        levels.add(blocking);
      }
    }
    return levels;
  }

  private Crossing crossing(String what, double low, double high, boolean isMovable) {
    double middle = (low + high) / 2;
    return new Crossing(
        new plycrag.layout.setout.Member(at(what, middle), middle, Shapes.onGrid((high - low) / 2)),
        isMovable);
  }

  private String at(String what, double place) {
    Tape tape = wall.tape();
    return "the " + what + " at " + tape.text(place);
  }

  private List<Keepout> keepouts() {
    List<Keepout> keepouts = new ArrayList<>(setbacks());
    for (Seam seam : frame.seams()) {
      if (seam.axis() == lines) {
        double reach = seam.gap() / 2 + toEdge();
        keepouts.add(
            new Keepout(at("seam", seam.middle()), seam.middle() - reach, seam.middle() + reach));
      }
    }
    frame.members().forEach(member -> partOf(member).ifPresent(keepouts::add));
    neighbours.forEach(neighbour -> behind(neighbour).ifPresent(keepouts::add));
    return keepouts;
  }

  /** From an insert's centre to the edge of a piece, mm. */
  private double toEdge() {
    return Math.max(inserts.flange() / 2 + clearance.insertToEdge(), inserts.hole() / 2);
  }

  private List<Keepout> setbacks() {
    Envelope outline = frame.facet().boundary().getEnvelopeInternal();
    Envelope core = new Envelope();
    frame.pieces().forEach(piece -> core.expandToInclude(piece.core().getEnvelopeInternal()));
    double low = Math.max(low(outline) + inserts.setback(), low(core) + toEdge());
    double high = Math.min(high(outline) - inserts.setback(), high(core) - toEdge());
    return List.of(
        new Keepout("the setback", Double.NEGATIVE_INFINITY, low),
        new Keepout("the setback", high, Double.POSITIVE_INFINITY));
  }

  /** What a member keeps off that is no crossing, or leans further than its crossing. */
  private Optional<Keepout> partOf(Member member) {
    boolean runsAcross =
        member.direction().isSquare() && member.role().isUpright() == (lines == Axis.UP);
    double low = low(member.box());
    double high = high(member.box());
    Envelope deep =
        member.section(Math.min(inserts.boltReach(), member.depth())).getEnvelopeInternal();
    boolean leans = low(deep) < low || high(deep) > high;
    boolean isPart =
        member.role() == Role.HEADER
            || (member.role() == Role.TRIMMER && plan.studs().at(low, high).isEmpty());
    if (!runsAcross || !(leans || isPart)) {
      return Optional.empty();
    }
    return Optional.of(
        new Keepout(
            at(member.role().word(), (low + high) / 2),
            Math.min(low - flangeToTimber(), Math.min(low, low(deep)) - boltToTimber()),
            Math.max(high + flangeToTimber(), Math.max(high, high(deep)) + boltToTimber())));
  }

  /** A member of another facet that lies behind most of a line, and runs the line's way. */
  private Optional<Keepout> behind(Neighbour neighbour) {
    Envelope shadow = neighbour.shadow();
    Envelope outline = frame.facet().boundary().getEnvelopeInternal();
    Envelope shared = shadow.intersection(outline);
    Member member = neighbour.member();
    boolean isLong = !shared.isNull() && lines.size(shared) >= lines.size(outline) / 2;
    boolean isNarrow = lines.other().size(shadow) <= member.breadth() + member.depth();
    return isLong && isNarrow
        ? Optional.of(
            new Keepout(
                "the " + member.role().word() + " of the next facet",
                low(shadow) - boltToTimber(),
                high(shadow) + boltToTimber()))
        : Optional.empty();
  }

  private double low(Envelope box) {
    return lines.other().low(box);
  }

  private double high(Envelope box) {
    return lines.other().high(box);
  }
}
