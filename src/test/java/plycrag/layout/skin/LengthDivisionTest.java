package plycrag.layout.skin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.Walls;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;
import plycrag.wall.Sheet;

class LengthDivisionTest {

  /**
   * Sizes worked by hand. 1300 leaves 78 beside a whole sheet, so both share 1298; 402.1 and 801.2
   * share exactly, since on the marking grid one would be too narrow, or too wide for its sheet.
   */
  @ParameterizedTest
  @CsvSource({
    "1220, 1220, 300, 1220, 1220",
    "2440, 1220, 300, 1220, 1218",
    "1300, 1220, 300, 649, 649",
    "1301, 1220, 300, 650, 649",
    "402.1, 400, 200, 200.05, 200.05",
    "801.2, 399.7, 399.65, 399.6, 399.6"
  })
  void sharesWhereTheLastWouldBeTooNarrow(
      double total, double stock, double least, double first, double last) {
    Sheet sheet = Walls.parameters("[[facet]]\n").sheet();
    Sheet asked =
        new Sheet(
            stock,
            stock,
            sheet.thickness(),
            sheet.laying(),
            new Sheet.Seams(sheet.seams().gap(), least, sheet.seams().drift()));
    LengthDivision.Span between = new LengthDivision.Span(0, total);
    LengthDivision course =
        LengthDivision.of(between, stock, stock, asked, new Tape(LengthUnit.MM));
    LengthDivision.Span low = course.spans().get(0);
    LengthDivision.Span high = course.spans().get(course.spans().size() - 1);
    assertThat(low.high() - low.low()).isCloseTo(first, within(1e-3));
    assertThat(high.high() - high.low()).isCloseTo(last, within(1e-3));
    assertThat(high.high()).isCloseTo(total, within(1e-3));
  }
}
