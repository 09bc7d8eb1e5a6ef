package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Backing;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.LengthDivision;
import plycrag.wall.Frame.LongStuds;
import plycrag.wall.buying.TimberStock;

/** Takes a frame's ground, member by member; what comes first keeps it. */
final class FrameFill {
  /** Nobody fixes a shorter block, and no sheet bends over such a gap, mm (common practice). */
  private static final double FILLER = 12;

  /** In breadths: what of a stud stands beside no side and is shorter is of no use (a choice). */
  private static final int SPARE = 2;

  private final FramePlan plan;
  private final EdgeStrips edges;
  private final FrameGround ground;
  private final TimberStock stock;
  private final LongStuds longStuds;

  /**
   * @param plan the studs, openings and rows of blocking
   * @param edges the timber along the sides
   * @param ground what may be taken
   * @param stock the timber that is sold
   * @param longStuds what becomes of studs longer than that
   */
  FrameFill(
      FramePlan plan,
      EdgeStrips edges,
      FrameGround ground,
      TimberStock stock,
      LongStuds longStuds) {
    this.plan = plan;
    this.edges = edges;
    this.ground = ground;
    this.stock = stock;
    this.longStuds = longStuds;
  }

  private interface Which {
    boolean is(StudPlan.Stud stud);
  }

  void fill() {
    Openings openings = plan.openings();
    edges.plates().forEach(this::takePlate);
    edges.rakes().forEach(ground::take);
    takeStuds(stud -> stud.fixity() == Fixity.OPENING, MemberRole.TRIMMER);
    openings.wideHeaders().forEach(ground::take);
    takeStuds(
        stud -> stud.fixity() == Fixity.EDGE || stud.fixity() == Fixity.SEAM, MemberRole.STUD);
    takeStuds(stud -> stud.fixity() == Fixity.FREE, MemberRole.STUD);
    openings.narrowHeaders().forEach(ground::take);
    openings.shortTrimmers().forEach(ground::take);
    plan.rows().rows().forEach(this::takeRow);
  }

  /** A plate in lengths that are sold. */
  private void takePlate(WishedMember wished) {
    Envelope box = Shapes.shared(wished.area(), ground.area()).getEnvelopeInternal();
    LengthDivision.Span along = new LengthDivision.Span(box.getMinX(), box.getMaxX());
    for (LengthDivision.Span span : new PlatePlan(along, plan.studs(), stock).spans()) {
      ground.take(wished.part(span.low(), span.high()));
    }
  }

  private void takeStuds(Which which, MemberRole role) {
    Envelope box = ground.area().getEnvelopeInternal();
    List<StudPlan.Stud> studs = plan.studs().studs();
    for (int at = 0; at < studs.size(); at++) {
      if (which.is(studs.get(at))) {
        StudPlan.Stud stud = studs.get(at);
        WishedMember wished = WishedMember.up(role, stud, box.getMinY(), box.getMaxY());
        if (stud.lean() == 0) {
          lengths(clearOfRows(wished), at % 2 == 1).forEach(this::take);
        } else {
          takeLeaning(wished, stud, at % 2 == 1);
        }
      }
    }
  }

  /**
   * A stud that leans with the side it stands at, and square ones in its line where the facet goes
   * on above or below that side.
   */
  private void takeLeaning(WishedMember wished, StudPlan.Stud stud, boolean fromAbove) {
    double low = wished.along().low();
    double high = wished.along().high();
    double reached = low;
    List<Direction.Span> between = new ArrayList<>();
    for (Direction.Span side : edges.sides(stud)) {
      between.add(new Direction.Span(reached, side.low()));
      lengths(wished.part(side.low(), side.high()), fromAbove).forEach(this::take);
      reached = side.high();
    }
    between.add(new Direction.Span(reached, high));
    double least = SPARE * wished.beside().size();
    between.stream()
        .filter(span -> span.size() >= least)
        .map(span -> squared(wished, span))
        .flatMap(part -> lengths(part, fromAbove).stream())
        .forEach(part -> ground.takeAllBut(part, least));
  }

  private static WishedMember squared(WishedMember wished, Direction.Span span) {
    return new WishedMember(
        wished.role(),
        wished.fixity(),
        wished.direction(),
        wished.between(span.low(), span.high()),
        wished.depth(),
        0);
  }

  /**
   * A free stud with a slanting end that lies within a row which backs an edge ends before that
   * row, so that the row is whole: between the stud's end and the side would be a crumb of it that
   * nobody can cut.
   */
  private WishedMember clearOfRows(WishedMember wished) {
    if (wished.fixity() != Fixity.FREE) {
      return wished;
    }
    List<DraftMember> drafts = ground.probe(wished);
    if (drafts.isEmpty()) {
      return wished;
    }
    double low =
        rowsAt(drafts.get(0), false, wished)
            .mapToDouble(Backing::high)
            .max()
            .orElse(wished.along().low());
    double high =
        rowsAt(drafts.get(drafts.size() - 1), true, wished)
            .mapToDouble(Backing::low)
            .min()
            .orElse(wished.along().high());
    return low < high ? wished.part(low, high) : wished;
  }

  /** The rows that back an edge and hold a slanting end of a stud. */
  private Stream<Backing> rowsAt(DraftMember draft, boolean high, WishedMember wished) {
    List<Double> ends = draft.ends(high);
    double middle = wished.beside().middle();
    Direction.Span end = draft.end(high);
    boolean isSquare = ends.stream().allMatch(at -> Math.abs(at - ends.get(0)) < Tolerance.TOUCH);
    return plan.rows().rows().stream()
        .filter(row -> !isSquare && !row.isFree() && row.left() < middle && middle < row.right())
        .map(BlockingRows.Row::backing)
        .filter(row -> row.low() < end.high() && end.low() < row.high());
  }

  /** The lengths of a stud; every second one is spliced from above, so that no two are in line. */
  private List<WishedMember> lengths(WishedMember wished, boolean fromAbove) {
    List<WishedMember> lengths = new ArrayList<>(List.of(wished));
    if (longStuds == LongStuds.SPLICED) {
      List<Double> rows = plan.rows().splices();
      for (DraftMember whole : ground.probe(wished)) {
        for (double place :
            new Splices(stock.longestMember(), rows, fromAbove).places(whole.reach())) {
          WishedMember upper = lengths.remove(lengths.size() - 1);
          lengths.add(upper.part(upper.along().low(), place));
          lengths.add(upper.part(place, upper.along().high()));
        }
      }
    }
    return lengths;
  }

  private void takeRow(BlockingRows.Row row) {
    WishedMember wished =
        WishedMember.level(MemberRole.BLOCKING, row.backing(), row.left(), row.right());
    if (row.isFree()) {
      ground.takeFree(wished);
    } else {
      ground.takeAllBut(wished, FILLER);
    }
  }

  /** What of a stud is shorter than broad is none: no screw would stay in it. */
  private void take(WishedMember wished) {
    if (wished.fixity() == Fixity.FREE) {
      ground.takeFree(wished);
    } else {
      ground.takeAllBut(wished, wished.beside().size());
    }
  }
}
