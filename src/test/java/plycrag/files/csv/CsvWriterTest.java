package plycrag.files.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.document.Cell;
import plycrag.document.Table;

class CsvWriterTest {

  @Test
  void headerStandsFirstAndLinesEndWithLineFeed() {
    Table table =
        new Table(
            "holes",
            List.of("mark", "u_mm"),
            List.of(
                List.of(Cell.of("main 56/235"), Cell.mm(562.5)),
                List.of(Cell.of("main 10/30"), Cell.mm(100))));

    assertThat(CsvWriter.write(table)).isEqualTo("mark,u_mm\nmain 56/235,562.5\nmain 10/30,100\n");
  }

  /** RFC 4180, section 2, rules 5 to 7. */
  @Test
  void fieldsAreQuotedWhereTheyNeedIt() {
    assertThat(field(Cell.of("a,b"))).isEqualTo("\"a,b\"");
    assertThat(field(Cell.of("the \"old\" boathouse"))).isEqualTo("\"the \"\"old\"\" boathouse\"");
    assertThat(field(Cell.of("two\nlines"))).isEqualTo("\"two\nlines\"");
  }

  @Test
  void numbersStayNumbers() {
    assertThat(field(Cell.mm(-0.5))).isEqualTo("-0.5");
    assertThat(field(Cell.mm(-0.00001))).isEqualTo("0");
    assertThat(field(Cell.of(-3))).isEqualTo("-3");
  }

  /** OWASP, CSV injection: the characters that start a formula. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-1",
        "@sum",
        "  =1",
        "\t=1",
        "\r=1",
        "\tx",
        "\rx",
        "＝1",
        "＋1",
        "－1",
        "＠a",
        "\u00a0=1",
        "\u200b=1",
        "\ufeff=1",
        "\n=1",
        "=",
        "=cmd|' /C calc'!A0"
      })
  void wordsThatASpreadsheetWouldRunStandBehindAnApostrophe(String words) {
    assertThat(LittleCsv.read(CsvWriter.write(table(Cell.of(words)))).get(1))
        .containsExactly("'" + words);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "main 56/235", "a=b", "’t Boothuis", "4 x 60", "\"=\"", "≤ 4"})
  void otherWordsStayAsTheyAre(String words) {
    assertThat(LittleCsv.read(CsvWriter.write(table(Cell.of(words)))).get(1))
        .containsExactly(words);
  }

  @Test
  void aHeadingIsGuardedToo() {
    Table table = new Table("t", List.of("=a"), List.of());

    assertThat(CsvWriter.write(table)).isEqualTo("'=a\n");
  }

  @Property
  void noFieldOfWordsStartsAFormula(
      @ForAll
          @Chars({'=', '+', '-', '@', '＝', '＠', ' ', '\t', '\r', '\n', '\'', '"', ',', 'a', '1'})
          String words) {
    String field = LittleCsv.read(CsvWriter.write(table(Cell.of(words)))).get(1).get(0);

    assertThat(field).doesNotMatch("(?s)(\\s*[=+@＝＋－＠-]|[\t\r]).*");
    assertThat(field).isIn(words, "'" + words);
  }

  @Property
  void twoReadersAgree(
      @ForAll String first, @ForAll @Chars({'"', ',', '\n', ' ', 'a'}) String second)
      throws IOException {
    Table table =
        new Table(
            "t", List.of("a", "b"), List.of(List.of(Cell.of(first + "x"), Cell.of(second + "x"))));
    String text = CsvWriter.write(table);

    try (CSVParser parser = CSVParser.parse(new StringReader(text), CSVFormat.RFC4180)) {
      assertThat(parser.getRecords().stream().map(CSVRecord::toList).toList())
          .isEqualTo(LittleCsv.read(text));
    }
  }

  private static Table table(Cell cell) {
    return new Table("t", List.of("a"), List.of(List.of(cell)));
  }

  private static String field(Cell cell) {
    String text = CsvWriter.write(table(cell));
    return text.substring("a\n".length(), text.length() - 1);
  }
}
