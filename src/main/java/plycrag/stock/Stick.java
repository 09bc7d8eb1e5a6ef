package plycrag.stock;

import java.util.List;
import plycrag.layout.Member;

/**
 * A stick with what is cut from it.
 *
 * @param number from 1, in the order of cutting
 * @param length as sold or as it is at hand, mm
 * @param isAtHand whether it need not be bought
 * @param cuts from its left end on, the longest first
 */
public record Stick(int number, double length, boolean isAtHand, List<Cut> cuts) {
  /** Copies the cuts. */
  public Stick {
    cuts = List.copyOf(cuts);
  }

  /**
   * A member cut from a stick.
   *
   * @param member what it becomes
   * @param offset of its left end from the stick's, mm
   */
  public record Cut(Member member, double offset) {
    /** Of its right end from the stick's left, mm. */
    public double end() {
      return offset + member.length();
    }
  }
}
