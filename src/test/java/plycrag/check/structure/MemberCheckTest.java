package plycrag.check.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.catalog.StrengthCatalog;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.MemberAxis;
import plycrag.layout.structure.MemberLine;

/**
 * Members against formulas of EN 1995-1-1 as worked out in {@code solve.timber}, and against a rail
 * that was reckoned by hand: 3.36 kNm in a 45 × 90 of C24 for a short time is three times too much.
 */
class MemberCheckTest {
  private static final List<Actions> ACTIONS =
      List.of(
          new Actions(0, 900, 20_000, 600_000, 0),
          new Actions(4000, -300, -50_000, -300_000, 80_000),
          new Actions(-3000, 2500, 1000, 900_000, -30_000),
          new Actions(-6000, 10, 0, 1000, 200_000));

  private static MemberResistance resistance(double breadth, double depth, String facet) {
    return MemberResistance.of(
        line(breadth, depth, facet),
        new TimberValues(StrengthCatalog.find("C24").orElseThrow()),
        Combination.HEAVY);
  }

  private static MemberLine line(double breadth, double depth, String facet) {
    Vector3 start = new Vector3(0, 0, 0);
    Solid none = new Solid(List.of(start), List.of(start));
    MemberAxis axis =
        new MemberAxis(
            "ST1",
            MemberRole.STUD,
            facet,
            start,
            new Vector3(0, 0, 2400),
            new Vector3(1, 0, 0),
            breadth,
            depth,
            none);
    return new MemberLine(
        axis,
        List.of(new MemberLine.Piece("ST1.1", 0, 800), new MemberLine.Piece("ST1.2", 800, 2400)));
  }

  @Test
  void whatIsReckonedFastIsWhatIsShown() {
    for (MemberResistance resistance :
        List.of(resistance(45, 145, "main"), resistance(145, 45, ""), resistance(45, 90, ""))) {
      for (MemberCheck check : MemberCheck.ALL) {
        for (Actions actions : ACTIONS) {
          double fast = check.utilisation(actions, resistance);
          if (fast > 0) {
            assertThat(check.worked(actions, resistance).value())
                .as(check.words() + " " + actions)
                .isCloseTo(fast, within(1e-9 * fast));
          }
        }
      }
    }
  }

  @Test
  void theRailThatWasTooWeakIsThreeTimesTooWeak() {
    Actions rail = new Actions(0, 0, 0, 3.36e6, 0);
    assertThat(new BendingCheck().utilisation(rail, resistance(45, 90, "")))
        .isCloseTo(3.0, within(0.06));
  }

  /**
   * Beam with compression: B7 of the reference cases has 0.385734 and 0.569021 for a stud alone.
   */
  @Test
  void aStudAloneBucklesAsInTheReferenceCase() {
    MemberResistance stud = resistance(45, 145, "");
    Actions actions = new Actions(-3000, 0, 0, 0.9e6, 0);
    assertThat(new ColumnCheck().utilisation(actions, stud)).isCloseTo(0.569021, within(1e-5));
    assertThat(stud.columnY().value()).isCloseTo(0.709877, within(1e-6));
    assertThat(stud.columnZ().value()).isCloseTo(0.095776, within(1e-6));
    assertThat(new ShearCheck().utilisation(new Actions(0, 2500, 0, 0, 0), stud))
        .isCloseTo(0.309754, within(1e-6));
  }

  @Test
  void whatIsUnderSheetsBucklesSidewaysBetweenItsStations() {
    assertThat(resistance(45, 145, "main").columnZ().value())
        .isGreaterThan(resistance(45, 145, "").columnZ().value());
    assertThat(resistance(45, 145, "main").columnY().value())
        .isEqualTo(resistance(45, 145, "").columnY().value());
  }

  @Test
  void weightAloneLastsAndCountsForLess() {
    TimberValues timber = new TimberValues(StrengthCatalog.find("C24").orElseThrow());
    assertThat(timber.basis(Combination.PERMANENT).of(24)).isCloseTo(11.0769, within(1e-4));
    assertThat(timber.basis(Combination.HEAVY).of(24)).isCloseTo(16.6154, within(1e-4));
  }
}
