package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.layout.setout.Keepout;
import plycrag.wall.Wall;

/**
 * What keeps the columns or the rows of an area off, members right across the facet apart: its
 * edges, seams, members that cross only a part of it or lean, and those of other facets that reach
 * behind it. A member that crosses only some of the lines keeps all of them off, as if it were
 * whole; what that costs is mended line by line afterwards ({@link Salvage}).
 */
final class AxisKeepouts {
  private final PatternArea area;
  private final FramedFacet frame;
  private final Axis lines;
  private final AxisReach reach;

  /** The area, as far as inserts of it may reach beyond. */
  private final Envelope around;

  private AxisKeepouts(PatternArea area, FramedFacet frame, Axis lines) {
    this.area = area;
    this.frame = frame;
    this.lines = lines;
    this.reach = AxisReach.of(area.wall());
    this.around = area.box();
    around.expandBy(Math.max(reach.toTimber(), reach.toEdge()));
  }

  /**
   * What keeps the lines of a facet off.
   *
   * @param plan where its members were planned
   * @param neighbours the members of other facets
   * @param lines the way the lines run
   */
  static List<Keepout> ofFacet(
      PatternArea area, FramedFacet frame, FramePlan plan, List<Neighbour> neighbours, Axis lines) {
    AxisKeepouts all = new AxisKeepouts(area, frame, lines);
    List<Keepout> keepouts = all.edges();
    for (Member member : frame.members()) {
      all.partOf(member, plan).ifPresent(keepouts::add);
    }
    neighbours.forEach(neighbour -> all.behind(neighbour).ifPresent(keepouts::add));
    return keepouts;
  }

  /** What keeps the lines of a zone off: every member that runs their way in it, as it stands. */
  static List<Keepout> ofZone(
      PatternArea area, FramedFacet frame, List<Neighbour> neighbours, Axis lines) {
    AxisKeepouts all = new AxisKeepouts(area, frame, lines);
    List<Keepout> keepouts = all.edges();
    for (Member member : frame.members()) {
      if (all.runsAcross(member) && all.around.intersects(member.box())) {
        keepouts.add(all.keepout(member));
      }
    }
    neighbours.forEach(neighbour -> all.behind(neighbour).ifPresent(keepouts::add));
    return keepouts;
  }

  private List<Keepout> edges() {
    List<Keepout> keepouts = new ArrayList<>(setbacks());
    for (Seam seam : frame.seams()) {
      if (seam.axis() == lines && crosses(seam)) {
        double half = seam.gap() / 2 + reach.toEdge();
        keepouts.add(
            new Keepout(at("seam", seam.middle()), seam.middle() - half, seam.middle() + half));
      }
    }
    return keepouts;
  }

  /** Whether a seam is as far along the lines as the area is. */
  private boolean crosses(Seam seam) {
    return seam.high() > lines.low(around) && seam.low() < lines.high(around);
  }

  private List<Keepout> setbacks() {
    Wall wall = area.wall();
    Envelope outline = area.facet().boundary().getEnvelopeInternal();
    Envelope core = new Envelope();
    frame.pieces().forEach(piece -> core.expandToInclude(piece.core().getEnvelopeInternal()));
    double setback = wall.inserts().setback();
    double low = Math.max(low(outline) + setback, low(core) + reach.toEdge());
    double high = Math.min(high(outline) - setback, high(core) - reach.toEdge());
    if (area.zone().isPresent()) {
      low = Math.max(low, low(area.box()) + area.pattern().setback());
      high = Math.min(high, high(area.box()) - area.pattern().setback());
    }
    return List.of(
        new Keepout("the setback", Double.NEGATIVE_INFINITY, low),
        new Keepout("the setback", high, Double.POSITIVE_INFINITY));
  }

  /** What a member keeps off that is no crossing, or leans further than its crossing. */
  private Optional<Keepout> partOf(Member member, FramePlan plan) {
    Envelope box = member.box();
    Envelope deep = deep(member);
    boolean leans = low(deep) < low(box) || high(deep) > high(box);
    boolean isPart =
        member.role() == Role.HEADER
            || (member.role() == Role.TRIMMER && plan.studs().at(low(box), high(box)).isEmpty());
    return runsAcross(member) && (leans || isPart)
        ? Optional.of(keepout(member))
        : Optional.empty();
  }

  private boolean runsAcross(Member member) {
    return member.direction().isSquare() && member.role().isUpright() == (lines == Axis.UP);
  }

  private Keepout keepout(Member member) {
    double low = low(member.box());
    double high = high(member.box());
    Envelope deep = deep(member);
    return new Keepout(
        at(member.role().word(), (low + high) / 2),
        Math.min(low - reach.flangeToTimber(), Math.min(low, low(deep)) - reach.boltToTimber()),
        Math.max(high + reach.flangeToTimber(), Math.max(high, high(deep)) + reach.boltToTimber()));
  }

  /** What a member takes as far behind as a bolt may reach. */
  private Envelope deep(Member member) {
    double depth = Math.min(area.wall().inserts().boltReach(), member.depth());
    return member.section(depth).getEnvelopeInternal();
  }

  /** A member of another facet that lies behind most of a line, and runs the line's way. */
  private Optional<Keepout> behind(Neighbour neighbour) {
    Envelope shadow = neighbour.shadow();
    Envelope box = area.box();
    Envelope shared = shadow.intersection(box);
    Member member = neighbour.member();
    boolean isLong = !shared.isNull() && lines.size(shared) >= lines.size(box) / 2;
    boolean isNarrow = lines.other().size(shadow) <= member.breadth() + member.depth();
    return isLong && isNarrow
        ? Optional.of(
            new Keepout(
                "the " + member.role().word() + " of the next facet",
                low(shadow) - reach.boltToTimber(),
                high(shadow) + reach.boltToTimber()))
        : Optional.empty();
  }

  private String at(String what, double place) {
    return area.wall().tape().placed(what, place);
  }

  private double low(Envelope box) {
    return lines.other().low(box);
  }

  private double high(Envelope box) {
    return lines.other().high(box);
  }
}
