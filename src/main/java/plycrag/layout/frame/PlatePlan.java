package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.LengthDivision;
import plycrag.wall.buying.TimberStock;

/**
 * How a plate is made of lengths that are sold: whole if it can be, otherwise joined over studs,
 * where two studs stand side by side between them, else on a stud's middle, each length as long as
 * may be.
 */
final class PlatePlan {
  private final LengthDivision.Span along;
  private final StudPlan plan;
  private final TimberStock stock;

  /**
   * @param along where it begins and ends, mm
   * @param plan the studs
   * @param stock the lengths that are sold
   */
  PlatePlan(LengthDivision.Span along, StudPlan plan, TimberStock stock) {
    this.along = along;
    this.plan = plan;
    this.stock = stock;
  }

  /** The lengths from left to right. */
  List<LengthDivision.Span> spans() {
    double longest = stock.longestMember();
    List<LengthDivision.Span> spans = new ArrayList<>();
    double low = along.low();
    while (Tolerance.isMore(along.high() - low, longest)) {
      double joint = lastJointWithin(low, low + longest);
      if (joint <= low) {
        break;
      }
      spans.add(new LengthDivision.Span(low, joint));
      low = joint;
    }
    spans.add(new LengthDivision.Span(low, along.high()));
    return spans;
  }

  private double lastJointWithin(double low, double high) {
    double best = low;
    boolean bestIsDoubled = false;
    List<StudPlan.Stud> studs = plan.studs();
    for (int at = 1; at < studs.size() - 1; at++) {
      StudPlan.Stud stud = studs.get(at);
      boolean doubled = Tolerance.same(studs.get(at + 1).low(), stud.high());
      double joint = doubled ? stud.high() : (stud.low() + stud.high()) / 2;
      boolean within = Tolerance.isMore(joint, low) && Tolerance.atMost(joint, high);
      if (within && (doubled || !bestIsDoubled)) {
        best = joint;
        bestIsDoubled = doubled;
      }
    }
    return best;
  }
}
