package plycrag.layout.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.geometry.Direction.Span;
import plycrag.layout.Layout;

class SplicedStudsTest {
  private static final String TALL =
      """
      [[facet]]
      width = 1220
      length = 6100
      [sheet]
      lay = "across"
      [frame]
      long-studs = "spliced"
      [stock]
      lengths = [4000]
      end-trim = 0
      """;

  private static List<Member> studs(Layout layout, double left) {
    return layout.members().stream()
        .filter(member -> member.role() == MemberRole.STUD)
        .filter(member -> Math.abs(member.box().getMinX() - left) < 1)
        .toList();
  }

  /** Whatever is sold, what is standard holds the sheets to the lengths of spliced studs. */
  @Property(tries = 12)
  void sheetsAreScrewedToSplicedStuds(
      @ForAll @IntRange(min = 3000, max = 6000) int length,
      @ForAll @IntRange(min = 2400, max = 3600) int sold) {
    String toml =
        TALL.replace("length = 6100", "length = " + length).replace("[4000]", "[" + sold + "]");
    assertThat(Inspection.of(Walls.laidOut(toml)).findings().stream().filter(Finding::isError))
        .isEmpty();
  }

  /**
   * Seams lie at 1221, 2443, 3665 and 4887 mm up, with a row of blocking on either side of each, so
   * that the highest seam within 4000 mm of the plate at 45 mm is at 3665; from above the lowest
   * within 6055 - 4000 is the one at 2443.
   */
  @Example
  void everySecondStudIsSplicedFromAboveAtBlocking() {
    Layout layout = Walls.laidOut(TALL);
    List<Double> lefts =
        layout.members().stream()
            .filter(member -> member.role() == MemberRole.STUD)
            .map(member -> member.box().getMinX())
            .distinct()
            .sorted()
            .toList();
    for (int at = 0; at < lefts.size(); at++) {
      List<Member> lengths = studs(layout, lefts.get(at));
      assertThat(lengths).hasSize(2).allMatch(length -> length.length() <= 4000);
      assertThat(lengths.get(0).box().getMaxY())
          .isEqualTo(lengths.get(1).box().getMinY())
          .isEqualTo(at % 2 == 0 ? 3665.0 : 2443.0);
    }
  }

  @Example
  void everySpliceIsAJointOfTwoLengths() {
    Layout layout = Walls.laidOut(TALL);
    List<Joint> splices =
        layout.joints().stream().filter(one -> one.kind() == Joint.Kind.STUD_SPLICE).toList();
    assertThat(splices)
        .hasSize(
            layout.members().stream()
                .filter(member -> member.role() == MemberRole.STUD)
                .map(member -> member.box().getMinX())
                .collect(Collectors.toSet())
                .size());
    assertThat(splices).allMatch(joint -> joint.length() == 45);
  }

  @Example
  void studsThatAreSoldStayWhole() {
    assertThat(Walls.laidOut(TALL.replace("[4000]", "[6100]")).joints())
        .noneMatch(joint -> joint.kind() == Joint.Kind.STUD_SPLICE);
  }

  @Property(tries = 200)
  void noLengthIsLongerThanIsSold(
      @ForAll @IntRange(min = 100, max = 20_000) int size,
      @ForAll @IntRange(min = 300, max = 6000) int longest,
      @ForAll boolean fromAbove,
      @ForAll List<@IntRange(min = 0, max = 20_000) Integer> rows) {
    Span whole = new Span(45, 45 + size);
    List<Double> middles = rows.stream().map(Integer::doubleValue).toList();
    double low = whole.low();
    for (double place : new Splices(longest, middles, fromAbove).places(whole)) {
      assertThat(place - low).isPositive().isLessThanOrEqualTo(longest + 1e-6);
      low = place;
    }
    assertThat(whole.high() - low).isPositive().isLessThanOrEqualTo(longest + 1e-6);
  }
}
