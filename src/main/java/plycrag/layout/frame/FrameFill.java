package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.LengthDivision;
import plycrag.wall.Frame.LongStuds;
import plycrag.wall.buying.TimberStock;

/** Takes a frame's ground, member by member; what comes first keeps it. */
final class FrameFill {
  /** Nobody fixes a shorter block, and no sheet bends over such a gap, mm (common practice). */
  private static final double FILLER = 12;

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
        WishedMember wished =
            clearOfRows(WishedMember.up(role, studs.get(at), box.getMinY(), box.getMaxY()));
        lengths(wished, at % 2 == 1).forEach(this::take);
      }
    }
  }

  /**
   * A free stud with a slanting end of which a side would lie within a row that backs an edge ends
   * under that row, so that the row is whole: between the stud's end and the side would be a crumb
   * of it that nobody can cut.
   */
  private WishedMember clearOfRows(WishedMember wished) {
    if (wished.fixity() != Fixity.FREE) {
      return wished;
    }
    double middle = wished.beside().middle();
    List<Double> ends =
        ground.probe(wished).stream()
            .max(Comparator.comparingDouble(draft -> draft.along().high()))
            .map(DraftMember::ends)
            .orElse(List.of());
    if (ends.stream().allMatch(end -> Math.abs(end - ends.get(0)) < Tolerance.TOUCH)) {
      return wished;
    }
    return plan.rows().rows().stream()
        .filter(row -> !row.isFree() && row.left() < middle && middle < row.right())
        .map(BlockingRows.Row::backing)
        .filter(row -> ends.stream().anyMatch(end -> row.low() < end && end < row.high()))
        .findFirst()
        .map(backing -> wished.part(wished.along().low(), backing.low()))
        .orElse(wished);
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
