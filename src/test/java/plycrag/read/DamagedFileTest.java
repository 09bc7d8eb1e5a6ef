package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import plycrag.finding.Finding;
import plycrag.finding.Place;

/** However a file is damaged, reading answers, with places inside the file. */
class DamagedFileTest {
  private static final String GOOD =
      """
      [wall]
      name = "River bay"
      unit = "mm"
      raise = 300
      [[facet]]
      angle = 30
      length = "2.4 m"
      [frame] # as measured
      section = [45, 90]
      [stock]
      lengths = [2400, 3000,
        3600]
      [inserts]
      pattern = "lines"
      columns = [100, 300]
      rows = [100, 300]
      when-blocked = "drop"
      """;

  @Provide
  Arbitrary<String> scraps() {
    return Arbitraries.strings()
        .withChars("\"'[]{}=,.#\n\r\t \\-_/0123456789aeinfmuxwr\u0000ü🛶".toCharArray())
        .ofMaxLength(4);
  }

  @Property(tries = 2000)
  void answersWithPlacesInTheFile(
      @ForAll("scraps") String scrap,
      @ForAll @IntRange(max = 250) int at,
      @ForAll @IntRange(max = 20) int cut) {
    int start = Math.min(at, GOOD.length());
    int end = Math.min(start + cut, GOOD.length());
    String text = GOOD.substring(0, start) + scrap + GOOD.substring(end);
    byte[] content = text.getBytes(StandardCharsets.UTF_8);
    checkPlaces(ParameterFile.read("bay.toml", content), text.split("\n", -1).length);
  }

  @Property(tries = 500)
  void answersToAnyBytes(@ForAll byte[] content) {
    ParameterFile.read("bay.toml", content)
        .findings()
        .forEach(finding -> assertThat(place(finding).line()).isPositive());
  }

  @Property(tries = 300)
  void oneCutEntryIsOneFinding(@ForAll @IntRange(min = 1, max = 16) int number) {
    List<String> lines = GOOD.lines().toList();
    String line = lines.get(number);
    if (!line.matches("[a-z-]+ = [^,]*|(columns|rows|section).*")) {
      return;
    }
    String cut = line.substring(0, line.indexOf('=') + 1) + " @";
    byte[] content = GOOD.replace(line + "\n", cut + "\n").getBytes(StandardCharsets.UTF_8);
    assertThat(ParameterFile.read("bay.toml", content).findings())
        .singleElement()
        .satisfies(finding -> assertThat(place(finding).line()).isEqualTo(number + 1));
  }

  @Example
  void anotherKindOfFileIsNotListedToItsEnd() {
    byte[] content = "0\nSECTION\n2\nENTITIES\n".repeat(5000).getBytes(StandardCharsets.UTF_8);
    assertThat(ParameterFile.read("sheet.dxf", content).findings()).hasSizeBetween(1, 101);
  }

  private static void checkPlaces(Reading<Parameters> reading, int lines) {
    assertThat(reading.findings())
        .allSatisfy(
            finding -> {
              assertThat(place(finding).line()).isBetween(1, lines + 1);
              assertThat(place(finding).column()).isPositive();
            });
  }

  private static Place.InFile place(Finding finding) {
    return (Place.InFile) finding.place();
  }
}
