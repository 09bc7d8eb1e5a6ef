package plycrag.layout.support;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Direction;

/**
 * Posts behind the wall on rails that run on under it, with a tie to the frame at every level and a
 * brace in every panel that is high enough.
 */
public final class Freestanding {
  /** A lower panel is left without a brace, since none would slant enough (a choice), mm. */
  private static final double PANEL = 500;

  /** Less is no room for a tie above a rail or another tie, mm. */
  private static final double ROOM = 20;

  private final Site site;
  private final double face;
  private final double front;
  private final boolean braced;
  private final SupportFrame.Draft draft = new SupportFrame.Draft();

  private Freestanding(Site site, double behind, double front, boolean braced) {
    this.site = site;
    this.face = site.hindmost() - behind;
    this.front = front;
    this.braced = braced;
  }

  /**
   * The support.
   *
   * @param behind from the hindmost of the frame to the posts' face, mm
   * @param front where the rails end, y in mm
   * @param braced whether slanting timber goes across the posts
   */
  public static SupportFrame of(Site site, double behind, double front, boolean braced) {
    Freestanding support = new Freestanding(site, behind, front, braced);
    if (support.upper().isEmpty()) {
      site.backs().forEach(back -> support.draft.notHeld(back.facet()));
    } else {
      support.braceAcross(site.stations().stream().map(support::station).toList());
    }
    return support.draft.frame();
  }

  private double rear() {
    return face - site.depth();
  }

  /** The height of the uppermost level that a tie can hold; the posts end below its tie. */
  private Optional<BackEdge> upper() {
    return site.backs().stream().filter(BackEdge::takesLevel).reduce((lower, higher) -> higher);
  }

  private Timber station(double x) {
    double rail = site.depth();
    Timber bottom = draft.add(box(Use.RAIL, x, Direction.LEVEL, rear(), 0, front, rail));
    double top = upper().orElseThrow().high().z();
    Timber post = draft.add(box(Use.POST, x, Direction.UP, rear(), rail, face, top - site.depth()));
    draft.add(
        Meeting.end(post, bottom, new SectionPlace(face - site.depth() / 2, rail), site.depth()));
    draft.add(
        Meeting.frame(
            bottom,
            site.backs().get(0).facet(),
            new SectionPlace(site.backs().get(0).low().y(), rail),
            site.breadth()));
    Timber below = bottom;
    double floor = rail;
    for (BackEdge back : site.backs()) {
      double high = back.high().z();
      if (!back.takesLevel()) {
        draft.notHeld(back.facet());
      } else if (high - site.depth() >= floor + ROOM) {
        below = level(x, back, new Panel(below, floor, post));
        floor = high;
      }
    }
    return post;
  }

  /** What lies under a panel, how high that reaches, and the post beside it. */
  private record Panel(Timber below, double floor, Timber post) {}

  private Timber level(double x, BackEdge back, Panel panel) {
    double high = back.high().z();
    boolean last = upper().orElseThrow().equals(back);
    Timber tie = draft.add(site.tie(x, last ? rear() : face, back, high));
    SectionPlace onPost = new SectionPlace(face, high - site.depth() / 2);
    draft.add(
        last
            ? Meeting.end(
                panel.post(),
                tie,
                new SectionPlace(face - site.depth() / 2, high - site.depth()),
                site.depth())
            : Meeting.end(tie, panel.post(), onPost, site.depth()));
    draft.add(site.onFrame(tie, back, high));
    double ceiling = high - site.depth();
    if (ceiling - panel.floor() >= PANEL && !hasRoom(back, panel.floor(), ceiling)) {
      draft.notHeld(back.facet());
    } else if (ceiling - panel.floor() >= PANEL) {
      Diagonal diagonal =
          Diagonal.between(
              new SectionPlace(face, panel.floor()),
              new SectionPlace(back.y(ceiling), ceiling),
              site.depth());
      Timber brace = draft.add(site.timber(Use.BRACE, x, diagonal.direction(), diagonal.corners()));
      Timber foot = diagonal.endsOnPost() ? panel.post() : panel.below();
      draft.add(Meeting.end(brace, foot, diagonal.lowEnd(), diagonal.lowLength()));
      draft.add(Meeting.end(brace, tie, diagonal.highEnd(), diagonal.highLength()));
    }
    return tie;
  }

  /** Whether a brace from the post's foot passes behind the lower end of a frame. */
  private boolean hasRoom(BackEdge back, double floor, double ceiling) {
    double part = (back.low().y() - face) / (back.y(ceiling) - face);
    double height = floor + part * (ceiling - floor);
    return part <= 0 || height > back.low().z() + ROOM;
  }

  private Timber box(
      Use use, double x, Direction way, double rear, double low, double front, double high) {
    return site.timber(
        use,
        x,
        way,
        List.of(
            new SectionPlace(rear, low),
            new SectionPlace(front, low),
            new SectionPlace(front, high),
            new SectionPlace(rear, high)));
  }

  /** A brace across the first bay and one across the last, flat on the posts' backs. */
  private void braceAcross(List<Timber> posts) {
    if (braced && posts.size() > 1) {
      braceBay(posts.get(0), posts.get(1), 0);
      if (posts.size() > 2) {
        int last = posts.size() - 1;
        braceBay(posts.get(last - 1), posts.get(last), last - 1);
      }
    }
  }

  private void braceBay(Timber left, Timber right, int bay) {
    Envelope post = left.outline().getEnvelopeInternal();
    SectionPlace low = new SectionPlace(site.stations().get(bay), post.getMinY());
    SectionPlace high =
        new SectionPlace(site.stations().get(bay + 1) + site.breadth(), post.getMaxY());
    Diagonal diagonal = Diagonal.withUprightEnds(low, high, site.depth());
    Timber brace =
        draft.add(
            new Timber(
                Use.BRACE,
                site.along(rear()),
                diagonal.direction(),
                Site.outline(diagonal.corners()),
                site.breadth()));
    draft.add(Meeting.lap(brace, left, diagonal.lowEnd(), site.depth()));
    draft.add(Meeting.lap(brace, right, diagonal.highEnd(), site.depth()));
  }
}
