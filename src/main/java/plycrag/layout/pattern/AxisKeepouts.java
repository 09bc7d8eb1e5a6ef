package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Direction.Span;
import plycrag.layout.frame.FramePlan;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Axis;
import plycrag.solve.setout.ForbiddenStretch;

/**
 * What keeps the columns or the rows of an area off, as its hindrances say, members right across
 * the facet apart: these are set out together with the lines. A member that crosses only some of
 * the lines keeps all of them off, as if it were whole; what that costs is mended line by line
 * afterwards ({@link PartlyBlockedLines}).
 */
final class AxisKeepouts {
  private static final String SETBACK = "the setback";

  private final AreaLines lines;
  private final InsertSurroundings around;

  private AxisKeepouts(AreaLines lines, InsertSurroundings around) {
    this.lines = lines;
    this.around = around;
  }

  /**
   * What keeps the lines of a facet off.
   *
   * @param plan where its members were planned
   * @param axis the way the lines run
   */
  static List<ForbiddenStretch> ofFacet(
      PatternArea area, InsertSurroundings around, FramePlan plan, Axis axis) {
    AreaLines bare = new AreaLines(area, axis, thing -> false);
    Predicate<Avoided> isCrossing =
        thing -> thing instanceof ClearOfTimber.Own own && isCrossing(own, plan, bare);
    return new AxisKeepouts(new AreaLines(area, axis, isCrossing), around).all();
  }

  /** What keeps the lines of a zone off: every member that runs their way in it, as it stands. */
  static List<ForbiddenStretch> ofZone(PatternArea area, InsertSurroundings around, Axis axis) {
    return new AxisKeepouts(new AreaLines(area, axis, thing -> false), around).all();
  }

  /** Whether a member that runs the lines' way is set out with them, and keeps off no more. */
  private static boolean isCrossing(ClearOfTimber.Own own, FramePlan plan, AreaLines lines) {
    Member member = own.member();
    Envelope box = member.box();
    boolean isPart =
        member.role() == MemberRole.HEADER
            || (member.role() == MemberRole.TRIMMER
                && plan.studs().at(lines.low(box), lines.high(box)).isEmpty());
    return !isPart && !own.leans(lines);
  }

  private List<ForbiddenStretch> all() {
    List<ForbiddenStretch> keepouts = setbacks();
    around.keepings().forEach(keeping -> keepouts.addAll(keeping.keepouts(lines)));
    return keepouts;
  }

  private List<ForbiddenStretch> setbacks() {
    PatternArea area = lines.area();
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (Keeping keeping : around.keepings()) {
      Span bounds = keeping.bounds(lines);
      low = Math.max(low, bounds.low());
      high = Math.min(high, bounds.high());
    }
    if (area.zone().isPresent()) {
      low = Math.max(low, lines.low(area.box()) + area.pattern().fit().setback());
      high = Math.min(high, lines.high(area.box()) - area.pattern().fit().setback());
    }
    List<ForbiddenStretch> setbacks = new ArrayList<>();
    if (low > Double.NEGATIVE_INFINITY) {
      setbacks.add(new ForbiddenStretch(SETBACK, Double.NEGATIVE_INFINITY, low));
    }
    if (high < Double.POSITIVE_INFINITY) {
      setbacks.add(new ForbiddenStretch(SETBACK, high, Double.POSITIVE_INFINITY));
    }
    return setbacks;
  }
}
