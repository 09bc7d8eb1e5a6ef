package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Backing;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.LengthDivision;
import plycrag.wall.Cutout;
import plycrag.wall.Frame;

/**
 * The timber round a facet's openings. One that fits between two studs gets headers from stud to
 * stud and short trimmers between them; for a wider one the studs give way: trimmers run past it on
 * both sides, and headers lie between those.
 *
 * @param wide the boxes around those for which studs give way
 * @param narrow the boxes around the others
 * @param studs of the facet, trimmers beside wide openings among them
 * @param frame what it is made of
 */
record Openings(List<Envelope> wide, List<Envelope> narrow, StudPlan studs, Frame frame) {
  /** Plans the studs of a facet round its openings. */
  interface Studs {
    /** The studs, with further stations. */
    StudPlan with(List<StudPlan.Station> stations);
  }

  Openings {
    wide = List.copyOf(wide);
    narrow = List.copyOf(narrow);
  }

  static Openings of(List<Cutout> cutouts, Frame frame, Studs planned) {
    List<Envelope> narrow =
        new ArrayList<>(
            cutouts.stream().map(cutout -> cutout.shape().getEnvelopeInternal()).toList());
    List<Envelope> wide = new ArrayList<>();
    StudPlan studs = planned.with(List.of());
    Optional<Envelope> next = tooWide(narrow, studs, frame);
    while (next.isPresent()) {
      narrow.remove(next.get());
      wide.add(next.get());
      studs = planned.with(stations(wide, frame));
      next = tooWide(narrow, studs, frame);
    }
    return new Openings(wide, narrow, studs, frame);
  }

  private static Optional<Envelope> tooWide(List<Envelope> boxes, StudPlan studs, Frame frame) {
    return boxes.stream().filter(box -> !fits(box, studs, frame)).findFirst();
  }

  /** Whether an opening lies between two studs, flush with one or with room for a trimmer. */
  private static boolean fits(Envelope box, StudPlan studs, Frame frame) {
    return studs
        .bay(box.getMinX(), box.getMaxX())
        .filter(bay -> hasRoom(box.getMinX() - bay.low(), frame))
        .filter(bay -> hasRoom(bay.high() - box.getMaxX(), frame))
        .isPresent();
  }

  private static boolean hasRoom(double room, Frame frame) {
    return !Tolerance.isSome(room) || Tolerance.atLeast(room, frame.breadth());
  }

  private static List<StudPlan.Station> stations(List<Envelope> wide, Frame frame) {
    List<StudPlan.Station> stations = new ArrayList<>();
    for (Envelope box : wide) {
      stations.add(StudPlan.Station.opening(box.getMinX() - frame.breadth(), frame));
      stations.add(StudPlan.Station.opening(box.getMaxX(), frame));
    }
    return stations;
  }

  /** Headers below and above wide openings. */
  List<WishedMember> wideHeaders() {
    return wide.stream()
        .flatMap(
            box -> headers(box, new LengthDivision.Span(box.getMinX(), box.getMaxX())).stream())
        .toList();
  }

  /** Headers below and above narrow openings, from stud to stud. */
  List<WishedMember> narrowHeaders() {
    return narrow.stream()
        .flatMap(
            box -> headers(box, studs.bay(box.getMinX(), box.getMaxX()).orElseThrow()).stream())
        .toList();
  }

  private List<WishedMember> headers(Envelope box, LengthDivision.Span between) {
    double below = box.getMinY() - frame.breadth();
    return List.of(header(below, between), header(box.getMaxY(), between));
  }

  private WishedMember header(double low, LengthDivision.Span between) {
    Backing backing = Backing.from(low, frame, Fixity.OPENING);
    return WishedMember.level(MemberRole.HEADER, backing, between.low(), between.high());
  }

  /** Trimmers beside narrow openings, between their headers. */
  List<WishedMember> shortTrimmers() {
    List<WishedMember> wishes = new ArrayList<>();
    for (Envelope box : narrow) {
      LengthDivision.Span bay = studs.bay(box.getMinX(), box.getMaxX()).orElseThrow();
      if (Tolerance.isSome(box.getMinX() - bay.low())) {
        wishes.add(trimmer(box.getMinX() - frame.breadth(), box));
      }
      if (Tolerance.isSome(bay.high() - box.getMaxX())) {
        wishes.add(trimmer(box.getMaxX(), box));
      }
    }
    return wishes;
  }

  private WishedMember trimmer(double low, Envelope box) {
    StudPlan.Stud stud = StudPlan.Stud.of(Backing.from(low, frame, Fixity.OPENING));
    return WishedMember.up(MemberRole.TRIMMER, stud, box.getMinY(), box.getMaxY());
  }
}
