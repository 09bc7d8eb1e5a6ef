package plycrag.read.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.finding.FindingLine;
import plycrag.finding.Place;
import plycrag.prices.Article;
import plycrag.prices.Offer;
import plycrag.prices.PriceList;
import plycrag.prices.SaleUnit;
import plycrag.read.Reading;

class PriceFileTest {
  private static final Path FOLDER = Path.of("src/test/resources/must-fail/prices");
  private static final String HEADER = "article,size,unit,contents,price,currency,tax,mass\n";
  private static final String LIST =
      """
      # merchants, spring
      currency,article , size,unit,contents,price,tax,mass,available

      EUR,timber,45 x 90 x 3000 mm,piece,,11.00,20,5.5,12
      EUR, "timber","3 1/2 x 1 1/2 in",metre,,4.5,,
      EUR,sheet screw,,pack,200,,20
      """
          .replace("\n", "\r\n");

  private static Reading<PriceList> read(String text) {
    return PriceFile.read("prices.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static PriceList good(String text) {
    Reading<PriceList> reading = read(text);
    assertThat(reading.findings()).isEmpty();
    return reading.value().orElseThrow();
  }

  @Test
  void readsColumnsInAnyOrderAndSizesInAnyUnit() {
    PriceList list = good(LIST);
    assertThat(list.currency()).isEqualTo("EUR");
    assertThat(list.offers())
        .containsExactly(
            new Offer(
                Article.TIMBER,
                List.of(45.0, 90.0, 3000.0),
                SaleUnit.PIECE,
                BigDecimal.ONE,
                Optional.of(new BigDecimal("11.00")),
                new BigDecimal("20"),
                Optional.of(new BigDecimal("5.5")),
                Optional.of(12)),
            new Offer(
                Article.TIMBER,
                List.of(38.1, 88.9),
                SaleUnit.METRE,
                BigDecimal.ONE,
                Optional.of(new BigDecimal("4.5")),
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.empty()),
            new Offer(
                Article.SHEET_SCREW,
                List.of(),
                SaleUnit.PACK,
                new BigDecimal("200"),
                Optional.empty(),
                new BigDecimal("20"),
                Optional.empty(),
                Optional.empty()));
  }

  @Test
  void anExactSizeComesBeforeAnySize() {
    PriceList list =
        good(HEADER + "nut,,piece,,1,EUR,,\nnut,10 mm,piece,,2,EUR,,\nbolt,,piece,,3,EUR,,\n");
    assertThat(prices(list, Article.NUT, 10.0)).containsExactly("2");
    assertThat(prices(list, Article.NUT, 12.0)).containsExactly("1");
    assertThat(prices(list, Article.WASHER, 10.0)).isEmpty();
  }

  private static List<String> prices(PriceList list, Article article, double size) {
    return list.of(article, List.of(size)).stream()
        .map(offer -> offer.price().orElseThrow().toPlainString())
        .toList();
  }

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void earnsItsMessages(Path file) throws IOException {
    Reading<PriceList> reading =
        PriceFile.read(file.getFileName().toString(), Files.readAllBytes(file));
    assertThat(reading.findings().stream().map(FindingLine::of))
        .containsExactlyElementsOf(
            Files.readAllLines(file).stream()
                .takeWhile(line -> line.startsWith("# "))
                .map(line -> line.substring(2))
                .toList());
    assertThat(reading.value()).isEmpty();
  }

  @Test
  void theFolderIsNotEmpty() throws IOException {
    assertThat(files()).hasSizeGreaterThan(7);
  }

  @Property(tries = 300)
  void aDamagedListIsReadOrToldWhereItIsWrong(
      @ForAll @IntRange(max = 250) int place, @ForAll char character, @ForAll boolean special) {
    int at = Math.min(place, LIST.length());
    char put = special ? "\"\n\r,;#x".charAt(character % 7) : character;
    Reading<PriceList> reading = read(LIST.substring(0, at) + put + LIST.substring(at));
    long lines = LIST.lines().count() + 1;
    assertThat(reading.findings())
        .allSatisfy(
            finding -> {
              Place.InFile found = (Place.InFile) finding.place();
              assertThat(found.line()).isBetween(1, (int) lines + 1);
              assertThat(found.column()).isBetween(1, LIST.length() + 2);
            });
  }

  @Test
  void bytesThatAreNoTextAreToldToo() {
    byte[] latin = {'a', (byte) 0xfc, 'b'};
    assertThat(PriceFile.read("prices.csv", latin).findings()).hasSize(1);
  }
}
