package plycrag.solve.support;

import java.util.List;
import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;

/**
 * Ledgers under the ceiling with a hanger to the frame at each station and level, and raking braces
 * from the floor behind low folds.
 */
public final class Hangers {
  /** Folds below are braced from the floor, mm (a choice, no source). */
  private static final double LOW = 1000;

  /** A shorter hanger is none, mm. */
  private static final double SHORTEST = 20;

  /** What a brace at 45° from the floor ends on leans out by less, degrees. */
  private static final double BRACED = 45;

  private final SupportSite site;
  private final double ceiling;
  private final Span joists;
  private final SupportFrame.Draft draft = new SupportFrame.Draft();

  private Hangers(SupportSite site, double ceiling, Span joists) {
    this.site = site;
    this.ceiling = ceiling;
    this.joists = joists;
  }

  /**
   * The support.
   *
   * @param ceiling its height above the floor, mm
   * @param joists what ledgers reach at least, so that they end on joists, x of the run, mm
   */
  public static SupportFrame of(SupportSite site, double ceiling, Span joists) {
    Hangers support = new Hangers(site, ceiling, joists);
    BackEdge top = site.backs().get(site.backs().size() - 1);
    for (BackEdge longest : site.backs()) {
      BackEdge back = longest.atAll(site.stations(longest));
      if (!longest.equals(top) && back.high().z() < LOW) {
        addFloorBraces(site, back, support.draft);
      } else {
        support.hang(back);
      }
    }
    return support.draft.frame();
  }

  private void hang(BackEdge back) {
    double front = front(back);
    double tie = site.timber().tie();
    double rear = front - tie;
    double under = ceiling - site.timber().ledger();
    if (!back.takesUpright()) {
      draft.notHeld(back, Unheld.Cause.TOO_UPRIGHT, back.angle(), BackEdge.FLATTEST);
      return;
    }
    if (under - back.z(front) < SHORTEST) {
      draft.notHeld(back, Unheld.Cause.CEILING, under - back.z(front), SHORTEST);
      return;
    }
    List<Double> stations = site.stations(back);
    Span over = site.over(stations);
    Span ends = new Span(Math.min(over.low(), joists.low()), Math.max(over.high(), joists.high()));
    double depth = site.timber().ledgerDepth();
    List<SupportTimber> ledgers =
        site.along(TimberUse.LEDGER, ends, stations, front, under, ceiling, depth);
    ledgers.forEach(draft::add);
    for (double x : stations) {
      SupportTimber hanger =
          draft.add(
              site.timber(
                  TimberUse.HANGER,
                  x,
                  Direction.UP,
                  List.of(
                      new SectionPlace(rear, back.z(rear)),
                      new SectionPlace(front, back.z(front)),
                      new SectionPlace(front, under),
                      new SectionPlace(rear, under))));
      double middle = front - tie / 2;
      draft.add(Meeting.end(hanger, site.under(x, ledgers), new SectionPlace(middle, under), tie));
      draft.add(Meeting.frame(hanger, back.facet(), new SectionPlace(middle, back.z(middle)), tie));
    }
  }

  /** Under the upper edge, or behind that where a frame above it stands further back. */
  private double front(BackEdge back) {
    double front = site.upright(back);
    for (BackEdge above :
        site.backs().stream().dropWhile(one -> !isOf(one, back)).skip(1).toList()) {
      double hindmost = Math.min(above.low().y(), above.high().y());
      front = Tolerance.isLess(hindmost, front - Tolerance.TOUCH) ? hindmost : front;
    }
    return front;
  }

  private static boolean isOf(BackEdge one, BackEdge other) {
    return one.facet().equals(other.facet());
  }

  /** Braces at 45° from the floor up to the back of a fold. */
  static void addFloorBraces(SupportSite site, BackEdge back, SupportFrame.Draft draft) {
    if (back.angle() >= BRACED) {
      draft.notHeld(back, Unheld.Cause.TOO_STEEP, back.angle(), BRACED);
      return;
    }
    double lean = back.y(1) - back.y(0);
    double half = site.timber().brace() * Math.sqrt(2) / (1 - lean) / 2;
    double high = site.level(back) - site.timber().tie() / 2 + half;
    double low = high - 2 * half;
    if (low < 0) {
      double required = site.edgeFor(back, site.level(back) - low);
      draft.notHeld(back, Unheld.Cause.TOO_LOW, back.high().z(), required);
      return;
    }
    double upperFoot = back.y(high) - high;
    double lowerFoot = back.y(low) - low;
    for (double x : site.innerStations(back)) {
      SupportTimber brace =
          draft.add(
              site.timber(
                  TimberUse.BRACE,
                  x,
                  Direction.of(Shapes.line(0, 0, 1, 1)),
                  List.of(
                      new SectionPlace(upperFoot, 0),
                      new SectionPlace(lowerFoot, 0),
                      new SectionPlace(back.y(low), low),
                      new SectionPlace(back.y(high), high))));
      double middle = (low + high) / 2;
      draft.add(
          Meeting.frame(brace, back.facet(), new SectionPlace(back.y(middle), middle), high - low));
    }
  }
}
