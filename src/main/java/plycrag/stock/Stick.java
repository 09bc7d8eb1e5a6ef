package plycrag.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.layout.Member;
import plycrag.params.StockParameters;

/**
 * A length of timber as sold, with what is cut from it.
 *
 * @param length as sold, mm
 * @param cuts in the order of cutting, the longest first
 */
public record Stick(double length, List<Member> cuts) {
  private static final double TOLERANCE = 1e-6;

  /** Copies the cuts. */
  public Stick {
    cuts = List.copyOf(cuts);
  }

  /**
   * First fit, longest first: every member goes into the first stick with room for it, and every
   * stick is then bought in the least length that holds its members and the kerfs between them.
   *
   * @throws IllegalArgumentException if a member is longer than all that is sold
   */
  public static List<Stick> firstFit(List<Member> members, StockParameters stock) {
    double longest = stock.longest();
    List<Member> ordered = new ArrayList<>(members);
    ordered.sort(Comparator.comparingDouble(Member::length).reversed());
    List<List<Member>> sticks = new ArrayList<>();
    for (Member member : ordered) {
      List<Member> room =
          sticks.stream()
              .filter(stick -> used(stick, member, stock) <= longest + TOLERANCE)
              .findFirst()
              .orElseGet(
                  () -> {
                    List<Member> fresh = new ArrayList<>();
                    sticks.add(fresh);
                    return fresh;
                  });
      room.add(member);
    }
    return sticks.stream().map(cuts -> new Stick(least(cuts, stock), cuts)).toList();
  }

  private static double used(List<Member> cuts, Member next, StockParameters stock) {
    return used(cuts, stock) + stock.kerf() + next.length();
  }

  private static double used(List<Member> cuts, StockParameters stock) {
    double lengths = cuts.stream().mapToDouble(Member::length).sum();
    return lengths + stock.kerf() * (cuts.size() - 1);
  }

  private static double least(List<Member> cuts, StockParameters stock) {
    double used = used(cuts, stock);
    return stock.lengths().stream()
        .filter(length -> used <= length + TOLERANCE)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("nothing sold holds " + used + " mm"));
  }
}
