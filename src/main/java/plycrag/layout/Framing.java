package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.params.FrameParameters;
import plycrag.params.FrameParameters.SeamBacking;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Sets the frame of a facet: plates across the studs' ends, studs flush with the edges, at every
 * seam that runs up and between them at the greatest spacing or less, and blocking between the
 * studs wherever the edge of a piece has nothing else behind it. At a mitred fold the plates of
 * both facets lie back to back in the plane that halves it, and the studs end against them.
 */
final class Framing {
  /** A stud shorter than this is none; a rule says so, mm. */
  private static final double LEAST = 1;

  private final Facet facet;
  private final FrameParameters frame;
  private final double thickness;
  private final List<Seam> seams;
  private final Footing footing;
  private final FoldCut below;
  private final FoldCut above;
  private final StudPlan studs;
  private final PlatePlan plates;
  private final MemberNumbers numbers;
  private final Tape tape;

  private Framing(Wall wall, Facet facet, List<Seam> seams, MemberNumbers numbers) {
    this.facet = facet;
    this.frame = wall.frame();
    this.thickness = wall.sheet().thickness();
    this.seams = seams;
    this.footing = Footing.of(facet, thickness, frame, wall.tape());
    this.below = FoldCut.below(facet, wall);
    this.above = FoldCut.above(facet, wall);
    this.studs = StudPlan.of(facet.width(), frame, seams, wall.tape());
    this.plates = new PlatePlan(facet.width(), studs, wall.stock());
    this.numbers = numbers;
    this.tape = wall.tape();
  }

  /** The members of a facet's frame: plates, studs, blocking, each in reading order. */
  static List<Member> of(Wall wall, Facet facet, List<Seam> seams, MemberNumbers numbers) {
    Framing framing = new Framing(wall, facet, seams, numbers);
    List<Member> members = new ArrayList<>();
    framing.addPlates(members);
    framing.addStuds(members);
    framing.addBlocking(members);
    return members;
  }

  /** The frame's lower edge at a depth behind the sheets' back. */
  private double low(double into) {
    return footing.plateLow() - below.timber(thickness + into);
  }

  /** The frame's upper edge at a depth behind the sheets' back. */
  private double high(double into) {
    return facet.length() + above.timber(thickness + into);
  }

  private void addPlates(List<Member> members) {
    double lowDepth = below.plateDepth(frame.depth());
    double highDepth = above.plateDepth(frame.depth());
    double under = below.plateBreadth(frame.breadth());
    double over = above.plateBreadth(frame.breadth());
    for (Course.Span span : plates.spans()) {
      Envelope near = box(span, low(0), low(0) + under);
      Envelope far = box(span, low(lowDepth), low(lowDepth) + under);
      members.add(member(Role.PLATE, Hold.EDGE, near, far, lowDepth));
    }
    for (Course.Span span : plates.spans()) {
      Envelope near = box(span, high(0) - over, high(0));
      Envelope far = box(span, high(highDepth) - over, high(highDepth));
      members.add(member(Role.PLATE, Hold.EDGE, near, far, highDepth));
    }
  }

  private void addStuds(List<Member> members) {
    double under = below.plateBreadth(frame.breadth());
    double over = above.plateBreadth(frame.breadth());
    for (StudPlan.Stud stud : studs.studs()) {
      Course.Span place = new Course.Span(stud.low(), stud.high());
      double depth = stud.depth();
      Course.Span up = new Course.Span(low(0) + under, high(0) - over);
      Course.Span upFar = new Course.Span(low(depth) + under, high(depth) - over);
      if (up.size() > LEAST && upFar.size() > LEAST) {
        Envelope near = box(place, up.low(), up.high());
        Envelope far = box(place, upFar.low(), upFar.high());
        members.add(member(Role.STUD, stud.hold(), near, far, depth));
      }
    }
  }

  private void addBlocking(List<Member> members) {
    List<Backing> rows = new ArrayList<>();
    if (footing.isBelowFacet()) {
      rows.add(new Backing(0, frame.breadth(), frame.depth(), Hold.EDGE));
    }
    for (Seam seam : seams) {
      if (seam.axis() == Axis.ACROSS) {
        rows.addAll(Backing.of(seam, frame));
      }
    }
    Course.Span plateMiddles =
        new Course.Span(
            low(0) + below.plateBreadth(frame.breadth()) / 2,
            high(0) - above.plateBreadth(frame.breadth()) / 2);
    for (Backing row : BlockingRows.of(rows, plateMiddles, frame, tape).rows()) {
      for (Course.Span bay : studs.bays()) {
        Envelope box = box(bay, row.low(), row.high());
        members.add(member(Role.BLOCKING, row.hold(), box, box, row.depth()));
      }
    }
  }

  private static Envelope box(Course.Span across, double low, double high) {
    return new Envelope(across.low(), across.high(), low, high);
  }

  private Member member(Role role, Hold hold, Envelope near, Envelope far, double depth) {
    return new Member(
        numbers.next(role), role, hold, Shapes.rectangle(near), Shapes.rectangle(far), depth);
  }

  /**
   * Timber behind an edge or a seam, across it.
   *
   * @param low where it begins, mm
   * @param high where it ends, mm
   * @param depth how far it reaches behind the sheets, mm
   * @param hold what keeps it there
   */
  record Backing(double low, double high, double depth, Hold hold) {

    /** The members, side by side, that back a seam. */
    static List<Backing> of(Seam seam, FrameParameters frame) {
      double middle = seam.middle();
      double breadth = frame.breadth();
      double depth = frame.depth();
      SeamBacking kind = frame.seams();
      return switch (kind) {
        case DOUBLED ->
            List.of(
                new Backing(middle - breadth, middle, depth, Hold.SEAM),
                new Backing(middle, middle + breadth, depth, Hold.SEAM));
        case FLAT ->
            List.of(new Backing(middle - depth / 2, middle + depth / 2, breadth, Hold.SEAM));
        case SHARED ->
            List.of(new Backing(middle - breadth / 2, middle + breadth / 2, depth, Hold.SEAM));
      };
    }
  }
}
