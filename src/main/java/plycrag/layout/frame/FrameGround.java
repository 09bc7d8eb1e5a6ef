package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Hulls;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Fixity;

/**
 * The area behind a facet's sheets that its frame may take, and what is taken of it. What comes
 * first keeps its ground; what comes later ends where it meets it, unless both run the same way.
 */
final class FrameGround {
  /** What is smaller is none, mm². */
  private static final double CRUMB = 1;

  /** A member shorter or thinner than this is a rounding at both of its sides, mm. */
  private static final double LEAST = 2 * Tolerance.TOUCH;

  /** Timber that is no broader than this on average is a shaving, and none (a choice), mm. */
  private static final double SHAVING = 3;

  /** What is cut square off a tip so that it goes no further behind, mm. */
  private static final double BLUNT = 2;

  private final Polygon area;
  private final List<SlopingSide> sides;
  private final double rim;
  private final List<DraftMember> taken = new ArrayList<>();

  /** Of what is taken, each with all that it takes behind. */
  private final List<Envelope> boxes = new ArrayList<>();

  /**
   * Free ground.
   *
   * @param area against the sheets' back, openings taken out
   * @param sides those of its outer edge that slope
   * @param rim how far an edge may go on beyond its timber, mm
   */
  FrameGround(Polygon area, List<SlopingSide> sides, double rim) {
    this.area = area;
    this.rim = rim;
    this.sides = List.copyOf(sides);
  }

  Polygon area() {
    return area;
  }

  /** What is taken, in order. */
  List<DraftMember> taken() {
    return List.copyOf(taken);
  }

  /** Takes what a wished can have, in order along it; nothing where others back the same ground. */
  List<DraftMember> take(WishedMember wished) {
    List<DraftMember> drafts = drafts(wished);
    keep(drafts);
    return drafts;
  }

  /** The same, but for what is shorter than a length, mm. */
  void takeAllBut(WishedMember wished, double length) {
    keep(drafts(wished).stream().filter(draft -> draft.along().size() >= length).toList());
  }

  private void keep(List<DraftMember> drafts) {
    taken.addAll(drafts);
    drafts.forEach(draft -> boxes.add(draft.box()));
  }

  /** What a wished could have; nothing is taken. */
  List<DraftMember> probe(WishedMember wished) {
    return drafts(wished);
  }

  /** The same, but for stubs and for what would take from the timber round an opening. */
  List<DraftMember> takeFree(WishedMember wished) {
    double breadth = wished.beside().size();
    List<DraftMember> drafts =
        drafts(wished).stream()
            .filter(draft -> draft.along().size() >= breadth && !isShared(draft))
            .toList();
    keep(drafts);
    return drafts;
  }

  private List<DraftMember> drafts(WishedMember wished) {
    List<DraftMember> near = near(wished.area().getEnvelopeInternal(), taken);
    List<Polygon> across =
        near.stream()
            .filter(other -> !other.direction().isParallel(wished.direction()))
            .map(DraftMember::footprint)
            .toList();
    Geometry rest = Shapes.without(mine(wished), across);
    List<DraftMember> drafts = new ArrayList<>();
    for (Polygon part : parts(rest, wished)) {
      for (Polygon one : Hulls.isConvex(part) ? List.of(part) : whole(part, wished)) {
        List<DraftMember> around = near(touching(one), near);
        if (!isBacked(one, wished, around)) {
          fitting(one, wished, around).flatMap(draft -> clear(draft, near)).ifPresent(drafts::add);
        }
      }
    }
    return drafts;
  }

  /**
   * A draft that keeps its shape to its back: with ends as they come; where those would be longer
   * behind, with square ones; where a side of an end would turn round behind, as a corner of timber
   * cut off by a little does, only where it has its full breadth.
   */
  private Optional<DraftMember> fitting(
      Polygon part, WishedMember wished, List<DraftMember> around) {
    DraftMember draft = draft(part, wished, around);
    return Stream.of(draft, draft.endedSquare())
        .filter(DraftMember::keepsItsShape)
        .findFirst()
        .or(() -> full(draft).map(full -> draft(full, wished, List.of())));
  }

  /** Where a draft has its full breadth, if that is as long as it is broad: screws stay in it. */
  private static Optional<Polygon> full(DraftMember draft) {
    Direction.Span beside = draft.direction().across().span(draft.footprint());
    double low =
        draft.ends(false).stream().mapToDouble(end -> end).max().orElse(Double.POSITIVE_INFINITY);
    double high =
        draft.ends(true).stream().mapToDouble(end -> end).min().orElse(Double.NEGATIVE_INFINITY);
    return high - low < beside.size()
        ? Optional.empty()
        : Optional.of(draft.wished().between(low, high, beside));
  }

  private Geometry mine(WishedMember wished) {
    return Shapes.whole(Shapes.sharedAreas(wished.area(), area));
  }

  /**
   * A draft that ends against a side which slopes away may reach others further back; it is cut
   * before those: square, if that leaves no edge bare that it backs, else slanting, so that it goes
   * on against the sheets.
   */
  private Optional<DraftMember> clear(DraftMember draft, List<DraftMember> near) {
    Direction.Span span = draft.along();
    Room room = room(draft);
    if (room.isEndless()) {
      return Optional.of(draft);
    }
    Optional<DraftMember> slanting =
        draft.wished().fixity() == Fixity.FREE || room.leaves(span, rim)
            ? Optional.empty()
            : draft.within(room.low(), room.high(), room.depth());
    return slanting.or(() -> square(draft, room, near)).filter(DraftMember::keepsItsShape);
  }

  /**
   * How far a draft may go for what it would meet behind.
   *
   * @param low where that ends below or left of it, mm along it
   * @param high where that begins above or right of it
   * @param depth how far behind the sheets the first of it is, mm
   */
  private record Room(double low, double high, double depth) {
    boolean isEndless() {
      return Double.isInfinite(low) && Double.isInfinite(high);
    }

    /** Whether no end of a stretch lies further beyond it than so much, mm. */
    boolean leaves(Direction.Span span, double most) {
      return low - span.low() <= most && span.high() - high <= most;
    }
  }

  private Room room(DraftMember draft) {
    Direction along = draft.direction();
    Room room =
        new Room(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, draft.wished().depth());
    for (DraftMember other : behind(draft)) {
      if (!other.direction().isParallel(along) && draft.meetsBehind(other)) {
        Direction.Span beyond = along.span(draft.sharedBehind(other));
        boolean isHigh = beyond.middle() > draft.along().middle();
        room =
            new Room(
                isHigh ? room.low() : Math.max(room.low(), beyond.high()),
                isHigh ? Math.min(room.high(), beyond.low()) : room.high(),
                Math.min(room.depth(), other.wished().depth()));
      }
    }
    return room;
  }

  /** Cut square before what it meets, and before the side that brought it there. */
  private Optional<DraftMember> square(DraftMember draft, Room room, List<DraftMember> near) {
    Direction.Span span = draft.along();
    double from =
        Double.isInfinite(room.low()) ? span.low() - 1 : Math.max(room.low(), span.low() + BLUNT);
    double to =
        Double.isInfinite(room.high())
            ? span.high() + 1
            : Math.min(room.high(), span.high() - BLUNT);
    if (to - from < LEAST) {
      return Optional.empty();
    }
    Polygon between = draft.wished().between(from, to);
    return Shapes.areas(Shapes.shared(draft.footprint(), between)).stream()
        .filter(Hulls::isConvex)
        .findFirst()
        .map(part -> draft(part, draft.wished(), near));
  }

  private static List<Polygon> parts(Geometry rest, WishedMember wished) {
    return Shapes.areas(rest).stream()
        .filter(part -> part.getArea() > SHAVING * part.getEnvelopeInternal().getDiameter())
        .filter(part -> wished.direction().span(part).size() > LEAST)
        .filter(part -> wished.direction().across().span(part).size() > LEAST)
        .sorted(Comparator.comparingDouble((Polygon part) -> wished.direction().span(part).low()))
        .toList();
  }

  private static List<DraftMember> near(Envelope box, List<DraftMember> drafts) {
    return drafts.stream()
        .filter(other -> other.footprint().getEnvelopeInternal().intersects(box))
        .toList();
  }

  private static Envelope touching(Polygon part) {
    Envelope box = new Envelope(part.getEnvelopeInternal());
    box.expandBy(LEAST);
    return box;
  }

  /** What is taken that a draft may meet at some depth. */
  private List<DraftMember> behind(DraftMember draft) {
    Envelope box = draft.box();
    List<DraftMember> behind = new ArrayList<>();
    for (int at = 0; at < taken.size(); at++) {
      if (boxes.get(at).intersects(box)) {
        behind.add(taken.get(at));
      }
    }
    return behind;
  }

  private DraftMember draft(Polygon part, WishedMember wished, List<DraftMember> near) {
    List<SlopingSide> around = new ArrayList<>(sides);
    near.forEach(other -> around.addAll(other.sides()));
    return new DraftMember(wished, part, DraftMember.sides(part, around, wished));
  }

  /** Whether others that run the same way lie there already. */
  private boolean isBacked(Polygon part, WishedMember wished, List<DraftMember> near) {
    if (wished.role() == MemberRole.STUD) {
      return false; // two studs in one place are crowded, and a rule says so
    }
    List<Polygon> alike =
        near.stream()
            .filter(other -> other.direction().isParallel(wished.direction()))
            .map(DraftMember::footprint)
            .toList();
    return Shapes.without(part, alike).getArea() < CRUMB;
  }

  private boolean isShared(DraftMember draft) {
    return near(draft.wished().area().getEnvelopeInternal(), taken).stream()
        .filter(other -> other.wished().fixity() == Fixity.OPENING)
        .anyMatch(other -> Shapes.shared(other.footprint(), draft.footprint()).getArea() > CRUMB);
  }

  /** Where a part with re-entrant corners has its full breadth. */
  private static List<Polygon> whole(Polygon part, WishedMember wished) {
    Direction.Span along = wished.direction().span(part);
    Direction.Span beside = wished.direction().across().span(part);
    Geometry missing = Shapes.without(wished.between(along.low(), along.high(), beside), part);
    List<Direction.Span> gaps = new ArrayList<>();
    Shapes.areas(missing).forEach(gap -> gaps.add(wished.direction().span(gap)));
    gaps.add(new Direction.Span(along.high(), along.high()));
    gaps.sort(Comparator.comparingDouble(Direction.Span::low));
    List<Polygon> whole = new ArrayList<>();
    double low = along.low();
    for (Direction.Span gap : gaps) {
      if (gap.low() - low > LEAST) {
        whole.add(wished.between(low, gap.low(), beside));
      }
      low = Math.max(low, gap.high());
    }
    return whole;
  }
}
