package plycrag.files.lint;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each fault the linter is to find, planted in a file that is sound without it. */
class DxfLintTest {
  /** Tags as "code value" lines, which are easier to read than the format itself. */
  private static final String GOOD =
      """
      0 SECTION|2 HEADER|9 $ACADVER|1 AC1009
      9 $EXTMIN|10 0|20 0|30 0|9 $EXTMAX|10 9|20 9|30 0
      0 ENDSEC|0 SECTION|2 TABLES
      0 VPORT|2 *ACTIVE
      0 LTYPE|2 CONTINUOUS
      0 LAYER|2 0|70 0|62 7|6 CONTINUOUS
      0 LAYER|2 OUTLINE_THROUGH|70 0|62 7|6 CONTINUOUS
      0 ENDSEC|0 SECTION|2 ENTITIES
      0 CIRCLE|8 0|10 5|20 5|30 0|40 1.25
      0 LINE|8 0|10 1|20 1|11 4|21 4
      0 POLYLINE|8 OUTLINE_THROUGH|70 1
      0 VERTEX|8 0|10 0|20 0
      0 VERTEX|8 0|10 9|20 0
      0 VERTEX|8 0|10 0|20 9
      0 SEQEND|8 0
      0 ENDSEC
      0 EOF
      """;

  private static final String GOOD_2000 =
      """
      0 SECTION|2 HEADER|9 $ACADVER|1 AC1015|9 $HANDSEED|5 20|9 $INSUNITS|70 4|9 $MEASUREMENT|70 1
      9 $EXTMIN|10 0|20 0|30 0|9 $EXTMAX|10 9|20 9|30 0
      0 ENDSEC|0 SECTION|2 TABLES
      0 VPORT|5 A|330 0|2 *ACTIVE
      0 LTYPE|5 B|330 0|2 CONTINUOUS
      0 LAYER|5 C|330 0|2 0|70 0|62 7|6 CONTINUOUS
      0 ENDSEC|0 SECTION|2 ENTITIES
      0 CIRCLE|5 D|330 A|100 AcDbEntity|8 0|10 5|20 5|30 0|40 1.25
      0 LWPOLYLINE|5 E|330 A|100 AcDbEntity|8 0|70 1|10 0|20 0|10 9|20 0|10 0|20 9
      0 ENDSEC
      0 EOF
      """;

  private static String tags(String lines) {
    return lines.replace('|', '\n').replaceAll("(?m)^([0-9]+) ", "$1\n");
  }

  @Test
  void findsNothingInSoundFiles() {
    assertThat(DxfLint.faults(tags(GOOD))).isEmpty();
    assertThat(DxfLint.faults(tags(GOOD_2000))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "40 1.25!40 NaN!not a number",
        "40 1.25!40 1.25E-5!not a number",
        "40 1.25!40 1,25!not a number",
        "10 5!10 -0!zero below zero",
        "10 5!10 -0.0!zero below zero",
        "70 1!70 1.0!not a whole number",
        "0 CIRCLE|8 0!0 CIRCLE|8 HOLES!undeclared layer: HOLES",
        "2 OUTLINE_THROUGH!2 OUTLINE-Ä!not ASCII",
        "2 OUTLINE_THROUGH!2 outline!layer name: outline",
        "2 0|70 0|62 7|6 CONTINUOUS!2 0|70 0|62 7|6 DASHED!undeclared linetype: DASHED",
        "0 EOF!999 end!no EOF",
        "0 LINE|8 0|10 1!0 LWPOLYLINE|8 0|70 0|10 7|20 7|10 1!of another version: LWPOLYLINE",
        "0 CIRCLE|8 0!0 CIRCLE|5 1F|8 0!handle of CIRCLE",
        "9 $EXTMIN!9 $INSUNITS|70 4|9 $EXTMIN!of another version: $INSUNITS",
        "9 $EXTMIN!9 $LIMMIN!no $EXTMIN",
        "*ACTIVE!SIDE!no active viewport",
        "0 LINE!0 CIRCLE|8 OUTLINE_THROUGH|10 5.006|20 5.006|40 1.25|0 LINE!coincident",
        "0 LINE!0 LINE|8 0|10 3|20 3|11 6|21 6|0 LINE!overlap",
        "0 LINE!0 LINE|8 0|10 4|20 4|11 1|21 1|0 LINE!overlap",
        "0 LINE!0 LINE|8 0|10 2|20 0.005|11 3|21 0.005|0 LINE!overlap",
        "11 4|21 4!11 1|21 1.005!no length",
        "8 OUTLINE_THROUGH|70 1!8 OUTLINE_THROUGH|70 0!open outline",
        "0 LINE|8 0!0 LINE|8 OUTLINE_THROUGH!open outline",
        "0 LINE|8 0!0 LINE|8 EDGE_THROUGH!open edge",
        "0 SEQEND!0 VERTEX|8 0|10 0|20 0|0 SEQEND!first vertex repeated",
      })
  void finds(String good, String bad, String fault) {
    assertThat(GOOD).contains(good);
    assertThat(DxfLint.faults(tags(GOOD.replace(good, bad))))
        .anyMatch(found -> found.contains(fault));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "$INSUNITS|70 4!$INSUNITS|70 1!no millimetres",
        "$MEASUREMENT|70 1!$MEASUREMENT|70 0!not metric",
        "0 CIRCLE|5 D!0 CIRCLE|5 E!handle twice: E",
        "0 CIRCLE|5 D!0 CIRCLE|5 20!handle above the seed: 20",
        "0 CIRCLE|5 D|!0 CIRCLE|!handle of CIRCLE",
        "0 CIRCLE|5 D|330 A!0 CIRCLE|5 D|330 F!owner of CIRCLE",
        "0 CIRCLE|5 D|330 A|100 AcDbEntity!0 CIRCLE|5 D|330 A!subclass marker of CIRCLE",
        "8 0|70 1|10 0|20 0!8 0|70 1|10 0|20 9|10 0|20 0!first vertex repeated",
      })
  void findsIn2000(String good, String bad, String fault) {
    assertThat(GOOD_2000).contains(good);
    assertThat(DxfLint.faults(tags(GOOD_2000.replace(good, bad))))
        .anyMatch(found -> found.contains(fault));
  }

  /** From (3, 0) on the lower side of the outline to (0, 3) on its left one. */
  @Test
  void takesAnEdgeThatClosesOnAnOutline() {
    String edge = "0 LINE|8 EDGE_THROUGH|10 3|20 0|11 0|21 3";
    String layer = "0 LAYER|2 EDGE_THROUGH|70 0|62 7|6 CONTINUOUS\n";
    String good =
        GOOD.replace("0 LINE|8 0|10 1|20 1|11 4|21 4", edge)
            .replace("0 LAYER|2 OUTLINE", layer + "0 LAYER|2 OUTLINE");
    assertThat(DxfLint.faults(tags(good))).isEmpty();
    assertThat(DxfLint.faults(tags(good.replace("11 0|21 3", "11 0.1|21 3"))))
        .anyMatch(found -> found.contains("open edge"));
  }

  @Test
  void refusesHalfATag() {
    assertThat(DxfLint.faults("0\nSECTION\n2\n")).anyMatch(found -> found.contains("not pairs"));
  }
}
