package plycrag;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.SampleLists.layout;
import static plycrag.SampleLists.list;
import static plycrag.SampleLists.number;
import static plycrag.SampleLists.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.support.PlacedMember;
import plycrag.wall.buying.Section;

/** The lists of every sample against its layout and each other, counted from their texts alone. */
class ListsAgreeTest {
  private static final double INCH = 25.4;

  static List<Path> samples() {
    return TestFiles.samples();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyMemberIsCutOnceAtItsLength(Path sample) {
    Map<String, Double> lengths = new TreeMap<>();
    for (Member member : layout(sample).members()) {
      assertThat(lengths.put(member.mark(), member.length())).as(member.mark()).isNull();
    }
    List<String> listed = new ArrayList<>();
    for (CSVRecord row : list(sample, "cut-list.csv")) {
      List<String> marks = List.of(row.get("mark").split(" ", -1));
      assertThat(number(row, "quantity")).isEqualTo(marks.size());
      for (String mark : marks) {
        assertThat(number(row, "length_mm")).isCloseTo(lengths.get(mark), within(0.06));
      }
      listed.addAll(marks);
    }
    assertThat(listed).containsExactlyInAnyOrderElementsOf(lengths.keySet());
    List<String> planned = new ArrayList<>();
    for (CSVRecord row : list(sample, "cutting-plan.csv")) {
      assertThat(number(row, "length_mm")).isCloseTo(lengths.get(row.get("mark")), within(1e-3));
      planned.add(row.get("mark"));
    }
    assertThat(planned).containsExactlyInAnyOrderElementsOf(lengths.keySet());
  }

  /** Both lists name one section for a member, and what it measures across its grain lies in it. */
  @ParameterizedTest
  @MethodSource("samples")
  void everyMemberIsCutFromTimberThatHoldsIt(Path sample) {
    Map<String, String> sections = new TreeMap<>();
    for (CSVRecord row : list(sample, "cut-list.csv")) {
      for (String mark : row.get("mark").split(" ", -1)) {
        sections.put(mark, row.get("section"));
      }
    }
    for (CSVRecord row : list(sample, "cutting-plan.csv")) {
      assertThat(row.get("section")).as(row.get("mark")).isEqualTo(sections.get(row.get("mark")));
    }
    for (PlacedMember placed : layout(sample).standing()) {
      String[] sides = sections.get(placed.member().mark()).split("x", -1);
      Section timber = new Section(Double.parseDouble(sides[0]), Double.parseDouble(sides[1]));
      assertThat(timber.holds(placed.section())).as(placed.member().mark()).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void sticksHoldTheirPiecesAndAreBought(Path sample) {
    double kerf = layout(sample).wall().stock().kerf();
    Map<String, List<CSVRecord>> sticks =
        list(sample, "cutting-plan.csv").stream()
            .collect(groupingBy(row -> row.get("stick"), TreeMap::new, toList()));
    Map<String, Long> lengths = new TreeMap<>();
    for (List<CSVRecord> pieces : sticks.values()) {
      double end = -kerf;
      pieces.sort(Comparator.comparingDouble(row -> number(row, "offset_mm")));
      for (CSVRecord piece : pieces) {
        assertThat(piece.get("section")).isEqualTo(pieces.get(0).get("section"));
        assertThat(number(piece, "offset_mm")).isGreaterThanOrEqualTo(end + kerf - 1e-3);
        end = number(piece, "offset_mm") + number(piece, "length_mm");
      }
      double length = number(pieces.get(0), "stock_length_mm");
      assertThat(end).isLessThanOrEqualTo(length + 1e-3);
      String section = pieces.get(0).get("section").replace("x", " x ") + " mm";
      lengths.merge(sides(section) + " " + Math.round(length), 1L, Long::sum);
    }
    Map<String, Long> bought = new TreeMap<>();
    for (CSVRecord row : list(sample, "shopping.csv")) {
      if (row.get("group").equals("timber")) {
        String section = row.get("article").replaceAll("structural timber, | actual.*", "");
        bought.put(
            sides(section) + " " + millimetres(row.get("size")), Long.valueOf(row.get("quantity")));
      }
    }
    assertThat(bought).isEqualTo(lengths);
  }

  /** The sides of a section to a millimetre, the smaller first. */
  private static List<Long> sides(String section) {
    double unit = section.endsWith(" in") ? INCH : 1;
    return Pattern.compile(" x ")
        .splitAsStream(section.substring(0, section.lastIndexOf(' ')))
        .map(side -> Math.round(fractions(side) * unit))
        .sorted()
        .toList();
  }

  /** {@code 1 1/2} is one and a half. */
  private static double fractions(String number) {
    double sum = 0;
    for (String part : number.split(" ", -1)) {
      String[] over = part.split("/", -1);
      sum += Double.parseDouble(over[0]) / (over.length > 1 ? Double.parseDouble(over[1]) : 1);
    }
    return sum;
  }

  private static long millimetres(String size) {
    double number = Double.parseDouble(size.split(" ", -1)[0]);
    return Math.round(size.endsWith(" in") ? number * INCH : number);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyScrewIsListedWhereItIs(Path sample) {
    Map<String, Long> laid = new TreeMap<>();
    for (FacetLayout facet : layout(sample).facets()) {
      for (Screw screw : facet.screws()) {
        String place =
            Math.round(screw.centre().getX() * 10) + "/" + Math.round(screw.centre().getY() * 10);
        laid.merge(
            screw.piece() + " " + screw.member() + " " + screw.mark() + " " + place, 1L, Long::sum);
      }
    }
    Map<String, Long> listed =
        list(sample, "fasteners.csv").stream()
            .collect(
                groupingBy(
                    row ->
                        row.get("piece")
                            + " "
                            + row.get("member")
                            + " "
                            + row.get("mark")
                            + " "
                            + Math.round(number(row, "u_mm") * 10)
                            + "/"
                            + Math.round(number(row, "v_mm") * 10),
                    TreeMap::new,
                    counting()));
    assertThat(listed).isEqualTo(laid);
    assertThat(laid.values()).allMatch(count -> count == 1);
    int throughGussets =
        layout(sample).fixings().gussets().stream()
            .mapToInt(gusset -> gusset.fit().screws().size())
            .sum();
    assertThat(quantity(sample, "sheet screw")).isEqualTo(laid.size() + throughGussets);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyInsertIsDrilledOnceAndBoughtWithFivePercentMore(Path sample) {
    List<String> laid = layout(sample).inserts().stream().map(Insert::mark).toList();
    assertThat(list(sample, "holes.csv").stream().filter(row -> row.get("kind").equals("insert")))
        .extracting(row -> row.get("mark"))
        .containsExactlyInAnyOrderElementsOf(laid)
        .doesNotHaveDuplicates();
    assertThat(quantity(sample, "insert")).isEqualTo(laid.size());
    assertThat(quantity(sample, "hold bolt")).isEqualTo(laid.size());
    for (CSVRecord row : list(sample, "shopping.csv")) {
      if (List.of("inserts", "holds").contains(row.get("group"))) {
        assertThat(number(row, "spare")).isBetween(0.05 * laid.size(), 0.05 * laid.size() + 1);
        assertThat(held(row)).isGreaterThanOrEqualTo(laid.size() + number(row, "spare"));
      }
    }
  }

  /** How many pieces the bought units hold. */
  private static double held(CSVRecord row) {
    String unit = row.get("sold_as");
    double contents =
        unit.startsWith("pack of ") ? Double.parseDouble(unit.substring("pack of ".length())) : 1;
    return number(row, "buy") * contents;
  }

  @ParameterizedTest
  @MethodSource("samples")
  void sheetsAndCostsAddUp(Path sample) {
    int sheets = layout(sample).sheets().size();
    assertThat(list(sample, "holes.csv").stream().map(row -> row.get("sheet")).distinct())
        .hasSize(sheets);
    int atHand =
        list(sample, "shopping.csv").stream()
            .filter(row -> row.get("group").equals("sheets"))
            .filter(row -> row.get("article").endsWith(", at hand"))
            .mapToInt(row -> (int) number(row, "quantity"))
            .sum();
    assertThat(quantity(sample, "sheet") + atHand)
        .isEqualTo(sheets + layout(sample).offcuts().furtherSheets());
    BigDecimal sum = BigDecimal.ZERO;
    long missing = 0;
    for (CSVRecord row : list(sample, "shopping.csv")) {
      boolean isKnown = row.get("cost").matches("[0-9]+\\.[0-9]{2}");
      sum = isKnown ? sum.add(new BigDecimal(row.get("cost"))) : sum;
      missing += row.get("cost").equals("missing") ? 1 : 0;
      if (!row.get("list_article").isEmpty()) {
        assertThat(held(row)).isGreaterThanOrEqualTo(number(row, "quantity"));
      }
    }
    List<CSVRecord> costs = list(sample, "costs.csv");
    CSVRecord total = costs.get(costs.size() - 1);
    assertThat(total.get("missing")).isEqualTo(String.valueOf(missing));
    assertThat(total.get("complete")).isEqualTo(missing == 0 ? "yes" : "no");
    if (sum.signum() > 0) {
      assertThat(new BigDecimal(total.get("cost"))).isEqualByComparingTo(sum);
    }
    BigDecimal inserts = BigDecimal.valueOf(layout(sample).inserts().size());
    assertThat(figure(sample, "cost of an insert"))
        .isEqualTo(
            missing > 0 ? "missing" : sum.divide(inserts, 2, RoundingMode.HALF_UP).toString());
  }

  private static String figure(Path sample, String name) {
    return list(sample, "figures.csv").stream()
        .filter(row -> row.get("figure").equals(name))
        .map(row -> row.get("value"))
        .findFirst()
        .orElseThrow();
  }
}
