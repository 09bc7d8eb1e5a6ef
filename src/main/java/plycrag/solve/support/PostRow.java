package plycrag.solve.support;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;

/**
 * The posts of a run, seen from behind, and what keeps them from swaying along the wall.
 *
 * <p>A brace lies flat on their backs over the first bay that is wide enough and one over the last.
 * A beam lies there too, along their upper ends; the knee braces under it stand between the posts,
 * flush with their backs, so that each ends on the side of a post and lies along the beam.
 */
final class PostRow {
  /** In depths of the timber (a choice, no source). */
  private static final double NARROWEST = 2;

  private final SupportSite site;
  private final List<SupportTimber> posts;
  private final double rear;
  private final SupportFrame.Draft draft;

  /**
   * The row.
   *
   * @param posts one a station, from the left
   * @param rear their backs, y in mm
   */
  PostRow(SupportSite site, List<SupportTimber> posts, double rear, SupportFrame.Draft draft) {
    this.site = site;
    this.posts = List.copyOf(posts);
    this.rear = rear;
    this.draft = draft;
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

  private void brace() {
    List<Integer> bays =
        IntStream.range(0, posts.size() - 1).filter(this::takesBrace).boxed().toList();
    if (bays.isEmpty()) {
      draft.sway();
      return;
    }
    braceBay(bays.get(0));
    if (bays.size() > 1) {
      braceBay(bays.get(bays.size() - 1));
    }
  }

  /** Over a narrower bay a brace would stand as upright as the posts, its ends over each other. */
  private boolean takesBrace(int bay) {
    double along = site.stations().get(bay + 1) + site.breadth() - site.stations().get(bay);
    return along >= NARROWEST * site.depth()
        && box().getHeight() >= site.depth() + Freestanding.ROOM;
  }

  private void braceBay(int bay) {
    SupportTimber left = posts.get(bay);
    SupportTimber right = posts.get(bay + 1);
    Envelope post = box();
    SectionPlace low = new SectionPlace(site.stations().get(bay), post.getMinY());
    SectionPlace high =
        new SectionPlace(site.stations().get(bay + 1) + site.breadth(), post.getMaxY());
    Diagonal diagonal = Diagonal.withUprightEnds(low, high, site.depth());
    SupportTimber brace = draft.add(flat(TimberUse.BRACE, rear, diagonal));
    draft.add(Meeting.lap(brace, left, diagonal.lowEnd(), site.depth()));
    draft.add(Meeting.lap(brace, right, diagonal.highEnd(), site.depth()));
  }

  private Envelope box() {
    return posts.get(0).outline().getEnvelopeInternal();
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
      double reach =
          Math.min(
              Math.min(asked, (right - left - Freestanding.ROOM) / 2),
              box().getHeight() - Freestanding.ROOM);
      if (reach < Diagonal.shortestKnee(site.depth())) {
        draft.sway();
      } else {
        Diagonal knee = Diagonal.knee(new SectionPlace(left, box().getMaxY() - reach), reach, site);
        addKnee(posts.get(bay), knee, beams);
        addKnee(posts.get(bay + 1), knee.mirroredAt((left + right) / 2), beams);
      }
    }
  }

  private List<SupportTimber> beams() {
    double top = box().getMaxY();
    List<SupportTimber> beams =
        site.along(TimberUse.BEAM, site.stations(), rear, top - site.depth(), top, site.breadth());
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
