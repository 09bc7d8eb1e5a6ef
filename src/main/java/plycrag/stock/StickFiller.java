package plycrag.stock;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import plycrag.layout.frame.Member;
import plycrag.solve.cutting.CuttingPlan;

/** Gives the pieces of a plan their members, in reading order. */
final class StickFiller {
  private final String section;
  private final StickMeasure measure;
  private final TreeMap<Long, Deque<Member>> waiting = new TreeMap<>();

  /**
   * Begins with the first stick.
   *
   * @param section of the members, the smaller side first, mm
   */
  StickFiller(String section, StickMeasure measure, List<Member> members) {
    this.section = section;
    this.measure = measure;
    for (Member member : members) {
      waiting.computeIfAbsent(measure.length(member), unseen -> new ArrayDeque<>()).add(member);
    }
  }

  /** The sticks: those at hand first, then the longest. */
  List<Stick> sticks(CuttingPlan plan) {
    List<CuttingPlan.Cut> ordered = new ArrayList<>(plan.patterns());
    ordered.sort(
        Comparator.comparing((CuttingPlan.Cut cut) -> !isAtHand(cut))
            .thenComparing(cut -> measure.source(cut.stock()) == Stick.Source.LACKING)
            .thenComparing(cut -> -measure.stockLength(cut.stock()))
            .thenComparing(cut -> -cut.lengths().get(0)));
    List<Stick> sticks = new ArrayList<>();
    for (CuttingPlan.Cut cut : ordered) {
      for (int i = 0; i < cut.sticks(); i++) {
        sticks.add(stick(sticks.size() + 1, cut));
      }
    }
    return sticks;
  }

  private boolean isAtHand(CuttingPlan.Cut cut) {
    return measure.source(cut.stock()) == Stick.Source.AT_HAND;
  }

  private Stick stick(int number, CuttingPlan.Cut cut) {
    List<Stick.Cut> cuts = new ArrayList<>();
    double offset = measure.stock().endTrim();
    for (long length : cut.lengths()) {
      Member member = waiting.get(length).remove();
      cuts.add(new Stick.Cut(member, offset));
      offset += member.length() + measure.stock().kerf();
    }
    int stock = cut.stock();
    return new Stick(number, section, measure.stockLength(stock), measure.source(stock), cuts);
  }
}
