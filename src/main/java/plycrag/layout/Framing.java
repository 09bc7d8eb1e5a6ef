package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.params.FrameParameters;
import plycrag.params.FrameParameters.SeamBacking;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Sets the frame of a facet: plates across the studs' ends, studs flush with the edges, at every
 * seam that runs up and between them at the greatest spacing or less, and blocking between the
 * studs wherever the edge of a piece has nothing else behind it.
 */
final class Framing {
  private final Facet facet;
  private final FrameParameters frame;
  private final List<Seam> seams;
  private final Footing footing;
  private final StudPlan studs;
  private final PlatePlan plates;

  private Framing(Wall wall, Facet facet, List<Seam> seams) {
    this.facet = facet;
    this.frame = wall.frame();
    this.seams = seams;
    this.footing = Footing.of(facet, wall.sheet().thickness(), frame, wall.tape());
    this.studs = StudPlan.of(facet.width(), frame, seams, wall.tape());
    this.plates = new PlatePlan(facet.width(), studs, wall.stock());
  }

  /** The members of a facet's frame: plates, studs, blocking, each in reading order. */
  static List<Member> of(Wall wall, Facet facet, List<Seam> seams) {
    Framing framing = new Framing(wall, facet, seams);
    List<Member> members = new ArrayList<>();
    framing.addPlates(members);
    framing.addStuds(members);
    framing.addBlocking(members);
    return members;
  }

  private void addPlates(List<Member> members) {
    int number = 0;
    for (double low : new double[] {footing.plateLow(), facet.length() - frame.breadth()}) {
      for (Course.Span span : plates.spans()) {
        Hold hold = Hold.EDGE;
        Envelope box = new Envelope(span.low(), span.high(), low, low + frame.breadth());
        members.add(member(Role.PLATE, ++number, hold, box, frame.depth()));
      }
    }
  }

  private void addStuds(List<Member> members) {
    double low = footing.plateLow() + frame.breadth();
    double high = facet.length() - frame.breadth();
    int number = 0;
    for (StudPlan.Stud stud : studs.studs()) {
      Envelope box = new Envelope(stud.low(), stud.high(), low, high);
      members.add(member(Role.STUD, ++number, stud.hold(), box, stud.depth()));
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
    int number = 0;
    for (Backing row : rows) {
      for (Course.Span bay : studs.bays()) {
        Envelope box = new Envelope(bay.low(), bay.high(), row.low(), row.high());
        members.add(member(Role.BLOCKING, ++number, row.hold(), box, row.depth()));
      }
    }
  }

  private static Member member(Role role, int number, Hold hold, Envelope box, double depth) {
    return new Member(
        role.letters() + number,
        role,
        hold,
        Shapes.rectangle(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()),
        depth);
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
