package plycrag.stock;

import java.util.List;
import plycrag.layout.frame.Member;

/**
 * A stick with what is cut from it.
 *
 * @param number from 1, in the order of cutting
 * @param section the smaller side first, mm
 * @param length as sold or as it is at hand, mm
 * @param source where it comes from
 * @param cuts from its left end on, the longest first
 */
public record Stick(int number, String section, double length, Source source, List<Cut> cuts) {

  /** Where a stick comes from. */
  public enum Source {
    /** The merchant has it. */
    BOUGHT,
    /** It need not be bought. */
    AT_HAND,
    /** Sold, but no more of it are there: it is to be found elsewhere. */
    LACKING
  }

  /** Copies the cuts. */
  public Stick {
    cuts = List.copyOf(cuts);
  }

  /** The same, so many sticks later in the order of cutting. */
  Stick after(int others) {
    return new Stick(number + others, section, length, source, cuts);
  }

  /** Whether it need not be bought. */
  public boolean isAtHand() {
    return source == Source.AT_HAND;
  }

  /** Whether it is beyond what the merchant has. */
  public boolean isLacking() {
    return source == Source.LACKING;
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
