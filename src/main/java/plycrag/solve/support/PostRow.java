package plycrag.solve.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Direction.Span;

/**
 * The posts of a run, seen from behind, and what keeps them from swaying along the wall.
 *
 * <p>A beam lies on edge along their backs at the upper ends, and with braces a sill at their feet.
 * Between the two a brace lies flat on their backs over the first bay that is wide enough and one
 * over the last, leaning against each other; they run past their posts too. The knee braces under
 * it stand between the posts, flush with their backs, so that each ends on the side of a post and
 * lies along the beam.
 */
final class PostRow {
  /** So far beyond the outer posts goes what lies on them, since screws keep off its ends, mm. */
  private static final double PAST = 40;

  /** In depths of the timber (a choice, no source). */
  private static final double NARROWEST = 2;

  private final SupportSite site;
  private final List<SupportTimber> posts;
  private final double rear;
  private final Reach reach;
  private final SupportFrame.Draft draft;

  /**
   * How high what stiffens a row reaches.
   *
   * @param low the underside of the sill, mm
   * @param high the top of the beam, mm
   * @param free how far under the beam braces end, since something else is on the posts there, mm
   */
  record Reach(double low, double high, double free) {
    /** Over the whole of the lowest post: what lies on all of them is no higher. */
    static Reach of(List<SupportTimber> posts) {
      Envelope lowest =
          posts.stream()
              .map(PostRow::reach)
              .min(Comparator.comparingDouble(Envelope::getMaxY))
              .orElseThrow();
      return new Reach(lowest.getMinY(), lowest.getMaxY(), 0);
    }

    double height() {
      return high - low;
    }
  }

  /**
   * The row.
   *
   * @param posts one a station, from the left
   * @param rear their backs, or what stands out in front of them by as much as timber is thick; y
   *     in mm
   * @param reach how high what stiffens them goes
   */
  PostRow(
      SupportSite site,
      List<SupportTimber> posts,
      double rear,
      Reach reach,
      SupportFrame.Draft draft) {
    this.site = site;
    this.posts = List.copyOf(posts);
    this.rear = rear;
    this.reach = reach;
    this.draft = draft;
  }

  /** A sill alone, at the underside of what it reaches. */
  void tie() {
    along(TimberUse.SILL, reach.low());
  }

  void stiffen(Stiffening asked) {
    switch (asked.along()) {
      case BRACES -> brace();
      case KNEES -> addKnees(asked.knee());
      case NOTHING -> {
        return;
      }
    }
    if (posts.size() < 2) {
      draft.sway();
    }
  }

  /** A brace over the first bay and one over the last, which lean against each other. */
  private void brace() {
    along(TimberUse.BEAM, reach.high() - site.depth());
    along(TimberUse.SILL, reach.low());
    List<Integer> bays =
        IntStream.range(0, posts.size() - 1).filter(this::takesBrace).boxed().toList();
    if (bays.isEmpty()) {
      draft.sway();
      return;
    }
    int first = bays.get(0);
    int last = bays.get(bays.size() - 1);
    Optional<Diagonal> rising = braceBay(first, false, 0);
    if (last > first) {
      braceBay(last, true, last == first + 1 ? rising.map(this::under).orElse(0.0) : 0);
    }
  }

  /** Over a narrower bay a brace would stand as upright as the posts, its ends over each other. */
  private boolean takesBrace(int bay) {
    double along = site.stations().get(bay + 1) + site.breadth() - site.stations().get(bay);
    return along >= NARROWEST * site.depth();
  }

  /**
   * Over one bay; none where it rises by less than both its ends take, so that it hardly slants.
   *
   * @param lower how much lower its upper end lies than it could, mm
   */
  private Optional<Diagonal> braceBay(int bay, boolean falls, double lower) {
    SupportTimber left = posts.get(bay);
    SupportTimber right = posts.get(bay + 1);
    double from = site.stations().get(bay) - PAST;
    double to = site.stations().get(bay + 1) + site.breadth() + PAST;
    SectionPlace low = new SectionPlace(from, reach.low() + site.depth());
    SectionPlace high = new SectionPlace(to, reach.high() - site.depth() - reach.free() - lower);
    if (high.z() - low.z() < Diagonal.shortestKnee(site.timber().brace())) {
      draft.sway();
      return Optional.empty();
    }
    Diagonal rising = Diagonal.withUprightEnds(low, high, site.timber().brace());
    Diagonal diagonal = falls ? rising.mirroredAt((from + to) / 2) : rising;
    SupportTimber brace = draft.add(flat(TimberUse.BRACE, rear, diagonal));
    double deep = site.timber().brace();
    SupportTimber atFoot = falls ? right : left;
    SupportTimber atTop = falls ? left : right;
    draft.add(Meeting.lap(brace, atFoot, on(falls ? bay + 1 : bay, diagonal), deep));
    draft.add(Meeting.lap(brace, atTop, on(falls ? bay : bay + 1, diagonal), deep));
    return Optional.of(diagonal);
  }

  /** The middle of where a brace crosses a post. */
  private SectionPlace on(int post, Diagonal diagonal) {
    double middle = site.stations().get(post) + site.breadth() / 2;
    SectionPlace low = diagonal.lowEnd();
    SectionPlace high = diagonal.highEnd();
    double part = (middle - low.y()) / (high.y() - low.y());
    return new SectionPlace(middle, low.z() + part * (high.z() - low.z()));
  }

  private SupportTimber flat(TimberUse use, double face, Diagonal diagonal) {
    return new SupportTimber(
        use,
        site.along(face),
        diagonal.direction(),
        SupportSite.outline(diagonal.corners()),
        site.breadth());
  }

  private void addKnees(double asked) {
    List<SupportTimber> beams = beams();
    for (int bay = 0; bay + 1 < posts.size(); bay++) {
      double left = site.stations().get(bay) + site.breadth();
      double right = site.stations().get(bay + 1);
      double far =
          Math.min(
              Math.min(asked, (right - left - Freestanding.ROOM) / 2),
              reach.height() - Freestanding.ROOM);
      if (far < Diagonal.shortestKnee(site.timber().brace())) {
        draft.sway();
      } else {
        Diagonal knee = Diagonal.knee(new SectionPlace(left, reach.high() - far), far, site);
        addKnee(posts.get(bay), knee, beams);
        addKnee(posts.get(bay + 1), knee.mirroredAt((left + right) / 2), beams);
      }
    }
  }

  private List<SupportTimber> beams() {
    return along(TimberUse.BEAM, reach.high() - site.depth());
  }

  /** Timber on edge along the backs of all posts, which lies on each. */
  private List<SupportTimber> along(TimberUse use, double low) {
    double top = low + site.depth();
    Span over = site.over(site.stations());
    Span past = new Span(over.low() - PAST, over.high() + PAST);
    List<SupportTimber> beams =
        site.along(use, past, site.stations(), rear, low, top, site.breadth());
    for (SupportTimber beam : beams) {
      draft.add(beam);
      for (int at = 0; at < posts.size(); at++) {
        double left = Math.max(site.stations().get(at), reach(beam).getMinX());
        double right = Math.min(site.stations().get(at) + site.breadth(), reach(beam).getMaxX());
        if (right - left > Freestanding.ROOM / 2) {
          SectionPlace place = new SectionPlace((left + right) / 2, top - site.depth() / 2);
          draft.add(Meeting.lap(beam, posts.get(at), place, site.depth()));
        }
      }
    }
    return beams;
  }

  /** How much lower another that leans against a brace on one post lies, mm. */
  private double under(Diagonal brace) {
    double slope = Math.abs(brace.direction().v() / brace.direction().u());
    return brace.highLength() + 2 * (site.breadth() + 2 * PAST) * slope + Freestanding.ROOM;
  }

  private static Envelope reach(SupportTimber beam) {
    return beam.outline().getEnvelopeInternal();
  }

  private void addKnee(SupportTimber post, Diagonal diagonal, List<SupportTimber> beams) {
    SupportTimber knee = draft.add(flat(TimberUse.KNEE, rear + site.breadth(), diagonal));
    draft.add(Meeting.end(knee, post, diagonal.lowEnd(), diagonal.lowLength()));
    double half = site.depth() / 2;
    double back = diagonal.highEnd().y() > diagonal.lowEnd().y() ? -half : half;
    SectionPlace place =
        new SectionPlace(diagonal.highEnd().y() + back, diagonal.highEnd().z() - half);
    for (SupportTimber beam : touched(beams, diagonal)) {
      draft.add(Meeting.lap(knee, beam, place, site.depth()));
    }
  }

  /** The beams that a knee lies along: two where it lies over their joint. */
  private static List<SupportTimber> touched(List<SupportTimber> beams, Diagonal diagonal) {
    List<SupportTimber> touched = new ArrayList<>();
    for (SupportTimber beam : beams) {
      double middle = diagonal.highEnd().y();
      if (reach(beam).getMinX() < middle && middle < reach(beam).getMaxX()) {
        touched.add(beam);
      }
    }
    return touched;
  }
}
