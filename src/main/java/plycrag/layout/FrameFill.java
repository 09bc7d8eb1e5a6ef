package plycrag.layout;

import org.locationtech.jts.geom.Envelope;
import plycrag.params.StockParameters;

/**
 * Takes a frame's ground, member by member; what comes first keeps it.
 *
 * @param plan the studs, openings and rows of blocking
 * @param edges the timber along the sides
 * @param ground what may be taken
 * @param stock the timber that is sold
 */
record FrameFill(FramePlan plan, EdgeStrips edges, Ground ground, StockParameters stock) {

  private interface Which {
    boolean is(StudPlan.Stud stud);
  }

  void fill() {
    Openings openings = plan.openings();
    edges.plates().forEach(this::takePlate);
    edges.rakes().forEach(ground::take);
    takeStuds(stud -> stud.hold() == Hold.OPENING, Role.TRIMMER);
    openings.wideHeaders().forEach(ground::take);
    takeStuds(stud -> stud.hold() == Hold.EDGE || stud.hold() == Hold.SEAM, Role.STUD);
    takeStuds(stud -> stud.hold() == Hold.FREE, Role.STUD);
    openings.narrowHeaders().forEach(ground::take);
    openings.shortTrimmers().forEach(ground::take);
    plan.rows().rows().forEach(this::takeRow);
  }

  /** A plate in lengths that are sold. */
  private void takePlate(Strip wished) {
    Envelope box = wished.area().intersection(ground.area()).getEnvelopeInternal();
    Course.Span along = new Course.Span(box.getMinX(), box.getMaxX());
    for (Course.Span span : new PlatePlan(along, plan.studs(), stock).spans()) {
      ground.take(
          new Strip(
              wished.role(),
              wished.hold(),
              wished.direction(),
              wished.between(span.low(), span.high()),
              wished.depth(),
              wished.lean()));
    }
  }

  private void takeStuds(Which which, Role role) {
    Envelope box = ground.area().getEnvelopeInternal();
    for (StudPlan.Stud stud : plan.studs().studs()) {
      if (which.is(stud)) {
        take(Strip.up(role, stud, box.getMinY(), box.getMaxY()));
      }
    }
  }

  private void takeRow(BlockingRows.Row row) {
    take(Strip.level(Role.BLOCKING, row.backing(), row.left(), row.right()));
  }

  private void take(Strip strip) {
    if (strip.hold() == Hold.FREE) {
      ground.takeFree(strip);
    } else {
      ground.take(strip);
    }
  }
}
