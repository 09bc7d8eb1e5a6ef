package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.read.schema.NearestKey;

class NearestKeyTest {

  @ParameterizedTest
  @CsvSource({
    "sheet, thicknes, sheet.thickness",
    "sheet, thick, sheet.thickness",
    "inserts, thickness, sheet.thickness",
    "sheet, lenght, sheet.length",
    "facet, lenght, facet.length",
    "frame, stud_spacing, frame.stud-spacing",
    "frame, spacing, frame.stud-spacing",
    "wall, Raise, wall.raise",
    "'', carry-length, stock.carry-length"
  })
  void suggestsKeys(String table, String typed, String key) {
    assertThat(NearestKey.key(ParameterTable.TABLES, table, typed)).contains(key);
  }

  @ParameterizedTest
  @CsvSource({"sheet, colour", "wall, wall", "wall, x"})
  void suggestsNothingFarOff(String table, String typed) {
    assertThat(NearestKey.key(ParameterTable.TABLES, table, typed)).isEmpty();
  }
}
