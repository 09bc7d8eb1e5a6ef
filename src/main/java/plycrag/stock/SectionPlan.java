package plycrag.stock;

import java.math.BigDecimal;
import java.util.List;
import plycrag.layout.frame.Member;
import plycrag.solve.cutting.CuttingPlan;
import plycrag.solve.cutting.ScarceCutting;
import plycrag.wall.buying.Section;

/**
 * The sticks of one section and what is cut from them.
 *
 * @param section of all of them
 * @param sticks in the order of cutting
 * @param tooLong members that no stick yields
 * @param outlay what it spends, and what no plan falls below
 */
public record SectionPlan(
    Section section, List<Stick> sticks, List<Member> tooLong, Outlay outlay) {
  private static final long STEPS = 1_000_000_000;

  /** Copies the lists. */
  public SectionPlan {
    sticks = List.copyOf(sticks);
    tooLong = List.copyOf(tooLong);
  }

  static SectionPlan of(Section section, List<Member> members, StickMeasure measure) {
    List<Member> yielded = members.stream().filter(measure::isYielded).toList();
    List<Member> tooLong = members.stream().filter(member -> !measure.isYielded(member)).toList();
    CuttingPlan found = ScarceCutting.plan(measure.task(yielded), measure.sold(), STEPS);
    List<Stick> sticks = new StickFiller(SectionName.name(section), measure, yielded).sticks(found);
    return new SectionPlan(section, sticks, tooLong, outlay(found, sticks, measure));
  }

  private static Outlay outlay(CuttingPlan plan, List<Stick> sticks, StickMeasure measure) {
    if (measure.prices().isKnown()) {
      return new Outlay.OfMoney(
          BigDecimal.valueOf(plan.cost(), 2),
          BigDecimal.valueOf(plan.costBound(), 2),
          measure.prices().currency());
    }
    double bought = boughtLength(sticks);
    return new Outlay.OfLength(
        bought, bought - measure.millimetres(plan.cost() - plan.costBound()));
  }

  /** The same, cut after so many other sticks. */
  SectionPlan after(int others) {
    return new SectionPlan(
        section, sticks.stream().map(stick -> stick.after(others)).toList(), tooLong, outlay);
  }

  /** The section, the smaller side first, mm. */
  public String name() {
    return SectionName.name(section);
  }

  /** Those that no merchant of the price list has any more. */
  public List<Stick> lacking() {
    return sticks.stream().filter(Stick::isLacking).toList();
  }

  /** Of all bought sticks, those lacking among them, mm. */
  public double boughtLength() {
    return boughtLength(sticks);
  }

  private static double boughtLength(List<Stick> sticks) {
    return sticks.stream().filter(stick -> !stick.isAtHand()).mapToDouble(Stick::length).sum();
  }

  /** What becomes no member, kerfs and trimmed ends counted, in parts of all sticks' length. */
  public double waste() {
    double whole = sticks.stream().mapToDouble(Stick::length).sum();
    double used =
        sticks.stream()
            .flatMap(stick -> stick.cuts().stream())
            .mapToDouble(cut -> cut.member().length())
            .sum();
    return whole > 0 ? (whole - used) / whole : 0;
  }
}
