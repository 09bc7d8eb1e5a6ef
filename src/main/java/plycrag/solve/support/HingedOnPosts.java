package plycrag.solve.support;

import java.util.List;
import plycrag.geometry.Direction;
import plycrag.solve.support.Stiffening.Along;

/**
 * What holds a hinged run that stands by itself: posts behind it, as high as what holds the moving
 * part goes, on rails that reach as far in front as that leans and behind to the foot of a brace.
 * At each station a tie holds the kick, and the brace takes what the moving part pulls, so that no
 * post is bent. What stiffens the posts along the wall lies before them, where no brace is.
 */
public final class HingedOnPosts {
  /** From a post to the foot of its brace, of the height that it holds (a choice). */
  private static final double SLOPE = 0.6;

  /** From what holds the moving part to the beam over it, mm. */
  private static final double OVER = 60;

  /** How far under the beam the posts are kept free for that, mm. */
  private static final double FREE = 350;

  private final SupportSite site;
  private final double face;
  private final double front;
  private final double height;
  private final SupportFrame.Draft draft = new SupportFrame.Draft();

  private HingedOnPosts(SupportSite site, double behind, double front, double height) {
    this.site = site;
    this.face = site.hindmost() - behind;
    this.front = front;
    this.height = height;
  }

  /**
   * The support.
   *
   * @param behind from the hindmost of the kick to the posts' face, mm
   * @param front where the rails end, y in mm
   * @param height where the moving part is held on the posts, mm
   * @param braced whether braces keep the posts from swaying along the wall
   */
  public static SupportFrame of(
      SupportSite site, double behind, double front, double height, boolean braced) {
    return new HingedOnPosts(site, behind, front, height).frame(braced);
  }

  private SupportFrame frame(boolean braced) {
    BackEdge longest = site.backs().get(0);
    BackEdge kick = longest.atAll(site.stations(longest));
    double level = site.level(kick);
    double floor = site.timber().rail();
    if (!kick.takesLevel()) {
      draft.tooSteep(kick);
      return draft.frame();
    }
    if (level - site.timber().tie() < floor + Freestanding.ROOM) {
      double required = site.edgeFor(kick, floor + Freestanding.ROOM + site.timber().tie());
      draft.notHeld(kick, Unheld.Cause.TOO_LOW, kick.high().z(), required);
      return draft.frame();
    }
    List<SupportTimber> posts = site.stations().stream().map(x -> station(x, kick, level)).toList();
    new PostRow(site, posts, rear(), PostRow.Reach.of(posts), draft).tie();
    PostRow.Reach reach = new PostRow.Reach(level + Freestanding.ROOM, top(), FREE);
    Along along = braced ? Along.BRACES : Along.NOTHING;
    new PostRow(site, posts, face + site.breadth(), reach, draft)
        .stiffen(new Stiffening(along, false, 0));
    return draft.frame();
  }

  private double rear() {
    return face - site.timber().post();
  }

  /** Of the posts: the beam ends there. */
  private double top() {
    return site.tape().snapUp(height + OVER + site.depth());
  }

  private SupportTimber station(double x, BackEdge kick, double level) {
    double rail = site.timber().rail();
    double deep = site.timber().post();
    Diagonal prop = prop(rail);
    double behind = rear() - run();
    SupportTimber bottom =
        draft.add(site.box(TimberUse.RAIL, x, Direction.LEVEL, behind, 0, front, rail));
    SupportTimber post =
        draft.add(site.box(TimberUse.POST, x, Direction.UP, rear(), rail, face, top()));
    draft.add(Meeting.end(post, bottom, new SectionPlace(face - deep / 2, rail), deep));
    SupportTimber tie = draft.add(site.tie(x, face, kick, level));
    double middle = level - site.timber().tie() / 2;
    draft.add(Meeting.end(tie, post, new SectionPlace(face, middle), site.timber().tie()));
    draft.add(site.onFrame(tie, kick, level));
    SupportTimber brace =
        draft.add(site.timber(TimberUse.BRACE, x, prop.direction(), prop.corners()));
    draft.add(Meeting.end(brace, bottom, prop.lowEnd(), prop.lowLength()));
    draft.add(Meeting.end(brace, post, prop.highEnd(), prop.highLength()));
    return post;
  }

  /** How far behind the posts a brace's foot reaches, mm. */
  private double run() {
    return site.tape().snapUp(SLOPE * height);
  }

  /** Its upper end lies about where the moving part is held. */
  private Diagonal prop(double rail) {
    double half = site.timber().brace() * Math.sqrt(1 + 1 / (SLOPE * SLOPE)) / 2;
    double high = Math.min(top(), site.tape().snapUp(height + half));
    return Diagonal.prop(new SectionPlace(rear(), high), run(), high - rail, site.timber().brace());
  }
}
