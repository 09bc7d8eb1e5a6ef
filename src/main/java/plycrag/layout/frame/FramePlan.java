package plycrag.layout.frame;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.LengthDivision;

/**
 * Where the members of a facet that run up and across are to stand, before the ground says how much
 * of that each gets.
 *
 * @param openings with the studs of the whole facet
 * @param rows of blocking
 * @param across where the frame begins and ends, mm
 */
public record FramePlan(Openings openings, BlockingRows rows, LengthDivision.Span across) {

  /** The studs, trimmers beside wide openings among them. */
  public StudPlan studs() {
    return openings.studs();
  }

  /** Whether a stud stands free, and beside no opening that fits between studs. */
  public boolean isMovable(StudPlan.Stud stud) {
    return stud.fixity() == Fixity.FREE
        && openings.narrow().stream().noneMatch(box -> bounds(stud, box));
  }

  private boolean bounds(StudPlan.Stud stud, Envelope box) {
    Optional<LengthDivision.Span> bay = studs().bay(box.getMinX(), box.getMaxX());
    return bay.isPresent() && stud.high() >= bay.get().low() && stud.low() <= bay.get().high();
  }

  /**
   * The same with the movable members elsewhere.
   *
   * @param studMiddles of the movable studs, ascending, mm
   * @param rowMiddles of the free rows of blocking, ascending, mm
   */
  public FramePlan with(List<Double> studMiddles, List<Double> rowMiddles) {
    List<StudPlan.Stud> kept = studs().studs().stream().filter(one -> !isMovable(one)).toList();
    StudPlan moved = StudPlan.of(kept, studMiddles, openings.frame());
    Openings settled = new Openings(openings.wide(), openings.narrow(), moved, openings.frame());
    return new FramePlan(settled, rows.withFree(rowMiddles, across, openings.frame()), across);
  }
}
