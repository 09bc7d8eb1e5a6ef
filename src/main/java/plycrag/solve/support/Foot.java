package plycrag.solve.support;

import java.util.List;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;

/**
 * What the foot of a frame stands on: a heel behind a stud and along it, which stands flat on a
 * rail however the frame leans. What the stud pushes and lifts goes through it, so that no plate
 * stands on an arris.
 */
final class Foot {
  /** How far up the stud a heel reaches (a choice), mm. */
  private static final double REACH = 420;

  /** Of a low frame it takes no more than this part. */
  private static final double PART = 0.8;

  /** A heel that is less deep takes no screws beside each other (a choice), mm. */
  private static final double LEAST = 60;

  /** Between a heel and a post, mm. */
  private static final double CLEAR = 5;

  private final SupportSite site;
  private final double face;

  /**
   * @param face of the posts, y in mm
   */
  Foot(SupportSite site, double face) {
    this.site = site;
    this.face = face;
  }

  /** How high it reaches where the frame is not low, mm. */
  double most() {
    BackEdge back = site.backs().get(0);
    return back.low().z() + REACH * back.rise() / back.length();
  }

  /**
   * At one station.
   *
   * @return how high it reaches, mm
   */
  double stand(double x, SupportTimber rail, SupportFrame.Draft draft) {
    BackEdge back = site.backs().get(0);
    double low = site.timber().rail();
    double reach = Math.min(REACH, PART * back.length());
    double high = back.low().z() + reach * back.rise() / back.length();
    double level = back.length() / back.rise();
    double deep = Math.min(site.depth(), (back.y(low) - face - CLEAR) / level);
    if (deep < LEAST) {
      double behind = site.hindmost() - face;
      draft.notHeld(back, Unheld.Cause.HEEL, behind, behind + (LEAST - deep) * level);
      return low;
    }
    double aside = deep * level;
    SupportTimber heel =
        draft.add(
            site.timber(
                TimberUse.HEEL,
                x,
                Direction.of(Shapes.line(back.y(low), low, back.y(high), high)),
                List.of(
                    new SectionPlace(back.y(low) - aside, low),
                    new SectionPlace(back.y(low), low),
                    new SectionPlace(back.y(high), high),
                    new SectionPlace(back.y(high) - aside, high))));
    draft.add(Meeting.end(heel, rail, new SectionPlace(back.y(low) - aside / 2, low), aside));
    double middle = (back.low().z() + high) / 2;
    draft.add(Meeting.frame(heel, back.facet(), new SectionPlace(back.y(middle), middle), reach));
    return high;
  }
}
