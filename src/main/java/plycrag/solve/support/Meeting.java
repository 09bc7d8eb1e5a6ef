package plycrag.solve.support;

import java.util.Optional;

/**
 * Where a timber meets another, or the frame.
 *
 * @param first the timber that ends
 * @param second what it ends on; empty for the frame
 * @param facet whose frame it meets where there is no second; empty elsewhere
 * @param place the middle of where they meet, in (u, v) of the first one's plane
 * @param length of the line along which they meet, mm
 * @param lapped whether it lies along the other's side and does not end on it
 */
public record Meeting(
    SupportTimber first,
    Optional<SupportTimber> second,
    String facet,
    SectionPlace place,
    double length,
    boolean lapped) {

  /** The same on a part of that line. */
  public Meeting on(SectionPlace middle, double part) {
    return new Meeting(first, second, facet, middle, part, lapped);
  }

  static Meeting end(SupportTimber first, SupportTimber second, SectionPlace place, double length) {
    return new Meeting(first, Optional.of(second), "", place, length, false);
  }

  static Meeting lap(SupportTimber first, SupportTimber second, SectionPlace place, double length) {
    return new Meeting(first, Optional.of(second), "", place, length, true);
  }

  static Meeting frame(SupportTimber first, String facet, SectionPlace place, double length) {
    return new Meeting(first, Optional.empty(), facet, place, length, false);
  }
}
