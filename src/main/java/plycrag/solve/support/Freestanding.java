package plycrag.solve.support;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.Direction;
import plycrag.geometry.Tolerance;

/**
 * Posts behind the wall on rails that run on under it, with a tie to the frame at every level and a
 * brace or a knee brace in every panel that is high enough.
 */
public final class Freestanding {
  /** A lower panel is left without a brace, since none would slant enough (a choice), mm. */
  private static final double PANEL = 500;

  /** Less is no room for a tie above a rail or another tie, mm. */
  static final double ROOM = 20;

  private final SupportSite site;
  private final double face;
  private final double front;
  private final Stiffening stiffening;
  private final SupportFrame.Draft draft = new SupportFrame.Draft();

  private Freestanding(SupportSite site, double behind, double front, Stiffening stiffening) {
    this.site = site;
    this.face = site.hindmost() - behind;
    this.front = front;
    this.stiffening = stiffening;
  }

  /**
   * The support.
   *
   * @param behind from the hindmost of the frame to the posts' face, mm
   * @param front where the rails end, y in mm
   * @param stiffening what keeps the posts from swaying
   */
  public static SupportFrame of(
      SupportSite site, double behind, double front, Stiffening stiffening) {
    Freestanding support = new Freestanding(site, behind, front, stiffening);
    if (support.upper().isEmpty()) {
      site.backs().forEach(support.draft::tooSteep);
    } else {
      List<SupportTimber> posts = site.stations().stream().map(support::station).toList();
      new PostRow(site, posts, support.rear(), PostRow.Reach.of(posts), support.draft)
          .stiffen(stiffening);
    }
    return support.draft.frame();
  }

  private double rear() {
    return face - site.timber().post();
  }

  /** The height of the uppermost level that a tie can hold; the posts end below its tie. */
  private Optional<BackEdge> upper() {
    return site.backs().stream().filter(BackEdge::takesLevel).reduce((lower, higher) -> higher);
  }

  private boolean isUpper(BackEdge back) {
    return upper().orElseThrow().facet().equals(back.facet());
  }

  private SupportTimber station(double x) {
    double rail = site.timber().rail();
    SupportTimber bottom =
        draft.add(site.box(TimberUse.RAIL, x, Direction.LEVEL, rear(), 0, front, rail));
    double top = site.level(upper().orElseThrow().at(x));
    SupportTimber post =
        draft.add(
            site.box(
                TimberUse.POST, x, Direction.UP, rear(), rail, face, top - site.timber().tie()));
    draft.add(
        Meeting.end(
            post,
            bottom,
            new SectionPlace(face - site.timber().post() / 2, rail),
            site.timber().post()));
    Foot foot = new Foot(site, face);
    double clear = foot.stand(x, bottom, draft);
    SupportTimber below = bottom;
    double floor = rail;
    for (BackEdge longest : site.backs()) {
      BackEdge back = longest.at(x);
      double high = site.level(back);
      if (!back.takesLevel()) {
        draft.tooSteep(back);
      } else if (high - site.timber().tie() >= clear + ROOM) {
        below = level(x, back, new Panel(below, floor, post));
        floor = high;
        clear = high;
      } else if (below.equals(bottom) && isUpper(back)) {
        double above = site.backs().get(0).equals(longest) ? foot.most() : clear;
        double required = site.edgeFor(back, above + ROOM + site.timber().tie());
        draft.notHeld(back, Unheld.Cause.TOO_LOW, back.high().z(), required);
      }
    }
    return post;
  }

  /** What lies under a panel, how high that reaches, and the post beside it. */
  private record Panel(SupportTimber below, double floor, SupportTimber post) {}

  private SupportTimber level(double x, BackEdge back, Panel panel) {
    double high = site.level(back);
    boolean last = isUpper(back);
    SupportTimber tie = draft.add(site.tie(x, last ? rear() : face, back, high));
    SectionPlace onPost = new SectionPlace(face, high - site.timber().tie() / 2);
    draft.add(
        last
            ? Meeting.end(
                panel.post(),
                tie,
                new SectionPlace(face - site.timber().post() / 2, high - site.timber().tie()),
                site.timber().post())
            : Meeting.end(tie, panel.post(), onPost, site.timber().tie()));
    draft.add(site.onFrame(tie, back, high));
    double ceiling = high - site.timber().tie();
    if (ceiling - panel.floor() >= PANEL) {
      Optional<Diagonal> diagonal =
          stiffening.kneesAcross()
              ? knee(back, panel.floor(), ceiling)
              : brace(back, panel, ceiling);
      diagonal.ifPresent(found -> add(x, found, panel, tie));
    }
    return tie;
  }

  private void add(double x, Diagonal diagonal, Panel panel, SupportTimber tie) {
    TimberUse use = stiffening.kneesAcross() ? TimberUse.KNEE : TimberUse.BRACE;
    SupportTimber slanting =
        draft.add(site.timber(use, x, diagonal.direction(), diagonal.corners()));
    SupportTimber foot = diagonal.endsOnPost() ? panel.post() : panel.below();
    draft.add(Meeting.end(slanting, foot, diagonal.lowEnd(), diagonal.lowLength()));
    draft.add(Meeting.end(slanting, tie, diagonal.highEnd(), diagonal.highLength()));
  }

  /** From the post's foot to the frame, if it passes behind that. */
  private Optional<Diagonal> brace(BackEdge back, Panel panel, double ceiling) {
    if (!hasRoom(back, panel.floor(), ceiling)) {
      noBrace(back, panel.floor(), ceiling);
      return Optional.empty();
    }
    return Optional.of(
        Diagonal.between(
            new SectionPlace(face, panel.floor()),
            new SectionPlace(back.y(ceiling), ceiling),
            site.timber().brace()));
  }

  /** From which distance on one would pass: as far behind as makes it high enough there. */
  private void noBrace(BackEdge back, double floor, double ceiling) {
    double part = (back.low().z() + ROOM - floor) / (ceiling - floor);
    double behind = site.hindmost() - face;
    if (part >= 1) {
      draft.notHeld(back, Unheld.Cause.NO_BRACE, behind, behind);
    } else {
      double needed = (back.low().y() - part * back.y(ceiling)) / (1 - part);
      draft.notHeld(back, Unheld.Cause.BRACE, behind, site.hindmost() - needed);
    }
  }

  /** From the post to the underside of a tie, clear of what is below and of the frames. */
  private Optional<Diagonal> knee(BackEdge level, double floor, double ceiling) {
    double room =
        site.backs().stream()
            .filter(back -> back.low().z() <= ceiling)
            .flatMap(
                back ->
                    Stream.of(back.low().z(), Math.min(back.high().z(), ceiling))
                        .map(z -> back.y(z) - z))
            .mapToDouble(ahead -> ahead - face + ceiling - ROOM)
            .min()
            .orElse(0);
    double high = ceiling - floor - ROOM;
    double least = Diagonal.shortestKnee(site.timber().brace());
    double reach = Math.min(Math.min(stiffening.knee(), room), high);
    if (reach >= least) {
      return Optional.of(Diagonal.knee(new SectionPlace(face, ceiling - reach), reach, site));
    }
    if (high < least) {
      draft.notHeld(level, Unheld.Cause.LOW_PANEL, high, least);
    }
    if (stiffening.knee() < least) {
      draft.notHeld(level, Unheld.Cause.SHORT_KNEE, stiffening.knee(), least);
    }
    if (room < least) {
      double behind = site.hindmost() - face;
      draft.notHeld(level, Unheld.Cause.KNEE, behind, behind + least - room);
    }
    return Optional.empty();
  }

  /** Whether a brace from the post's foot passes behind the lower end of a frame. */
  private boolean hasRoom(BackEdge back, double floor, double ceiling) {
    double part = (back.low().y() - face) / (back.y(ceiling) - face);
    double height = floor + part * (ceiling - floor);
    return part <= 0 || Tolerance.atLeast(height, back.low().z() + ROOM);
  }
}
