package plycrag.layout.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Point;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.check.clearance.InsertClear;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.LayoutPlan;
import plycrag.layout.facet.FacetLayout;
import plycrag.read.WallMaker;

/**
 * Whatever stands in the list of hindrances is kept by the scatter and the solver, and its rule
 * reports just what else is left out. A conduit, of which nothing but this test knows, is no
 * exception.
 */
class InsertHindrancesTest {
  private static final List<Hindrance> WITH_CONDUIT =
      Stream.concat(InsertHindrances.ALL.stream(), Stream.of(new ClearOfConduit())).toList();

  /** Three facets at sharp folds, with an opening; nearly no setback, so that all else matters. */
  private static final String FOLDED =
      """
      [[facet]]
      name = "foot"
      angle = 0
      width = 2440
      length = 700
      [[facet]]
      name = "main"
      angle = 50
      width = 2440
      length = 1900
      [[facet]]
      name = "top"
      angle = 0
      width = 2440
      length = 700
      [[cutout]]
      facet = "main"
      centre = [600, 900]
      diameter = 300
      [inserts]
      setback = 8
      bolt-reach = 80
      """;

  private static final String SCATTERED =
      FOLDED
          + """
          pattern = "scatter"
          scatter-spacing = 90
          scatter-seed = %d
          """;

  /** Lines near the outline, on the seam at 1220 mm, over studs, and beside the opening. */
  private static final String LINED =
      FOLDED
          + """
          pattern = "lines"
          columns = [5, 60, 120, 240, 427, 470, 600, 753, 833, 940, 1010, 1220, 1700, 2100]
          rows = [24, 110, 380, 560, 690]
          when-blocked = "%s"
          """;

  private static final String GRID =
      """
      [[facet]]
      width = 2440
      length = 1220
      [inserts]
      pattern = "grid"
      pitch-across = 170
      pitch-up = 170
      setback = 80
      when-blocked = "%s"
      """;

  /** A pipe of 40 mm up every facet, so far from its left edge as no grid and no stud stands. */
  record ClearOfConduit() implements Hindrance {
    static final double MIDDLE = 930;

    @Override
    public String name() {
      return "insert-conduit";
    }

    @Override
    public String promise() {
      return "Every insert's flange is clear of the conduit.";
    }

    @Override
    public Keeping in(InsertSite site) {
      TakenRoom pipe =
          new TakenRoom.Flat(
              Shapes.rectangle(MIDDLE - 20, 0, MIDDLE + 20, site.frame().facet().length()));
      List<KeptDistance> margins = List.of(new KeptDistance(InsertPart.FLANGE, pipe, 10));
      return new KeptOff(this, site.insert(), List.of(new Conduit(margins)));
    }
  }

  record Conduit(List<KeptDistance> margins) implements Avoided {
    @Override
    public String mark() {
      return "C1";
    }

    @Override
    public String words() {
      return "conduit C1";
    }
  }

  private static Layout laidOut(String toml, List<Hindrance> hindrances) {
    return LayoutPlan.of(WallMaker.of(Walls.parameters(toml), List.of()), hindrances);
  }

  private static List<Finding> findings(Layout layout, List<Hindrance> hindrances) {
    return hindrances.stream()
        .flatMap(one -> new InsertClear(one).findings(layout).stream())
        .toList();
  }

  private static boolean isInConduit(Insert insert) {
    // 20 mm of pipe, 10 mm to keep, 13 mm of flange
    return Math.abs(insert.centre().getX() - ClearOfConduit.MIDDLE) < 20 + 10 + 13 - 0.01;
  }

  /** Where inserts were left out; their marks are as short as all others on the facet allow. */
  private static List<Place> omitted(Layout layout) {
    List<Place> omitted = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      for (Omission omission : facet.omissions()) {
        Point centre = omission.insert().centre();
        omitted.add(new Place.OnFacet(facet.facet().name(), centre.getX(), centre.getY()));
      }
    }
    return omitted;
  }

  @Test
  void eachHasARuleOfItsName() {
    List<String> rules = Inspection.rules().stream().map(Rule::name).toList();
    assertThat(rules).containsAll(InsertHindrances.ALL.stream().map(Hindrance::name).toList());
  }

  /**
   * Of what is there before the inserts, the scatter meets nothing; screws come later and slide.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void theScatterLosesNothingToThem(int seed) {
    List<Hindrance> before = WITH_CONDUIT.stream().filter(one -> !one.comesLater()).toList();
    Layout layout = laidOut(SCATTERED.formatted(seed), WITH_CONDUIT);
    assertThat(layout.inserts()).hasSizeGreaterThan(250);
    assertThat(findings(layout, before)).isEmpty();
    assertThat(
            layout.facets().stream()
                .flatMap(facet -> facet.omissions().stream())
                .map(Omission::reason)
                .filter(reason -> !reason.contains("screw")))
        .isEmpty();
  }

  @Test
  void aConduitMattersToTheScatter() {
    String toml = SCATTERED.formatted(1);
    assertThat(laidOut(toml, InsertHindrances.ALL).inserts())
        .anyMatch(InsertHindrancesTest::isInConduit);
    assertThat(laidOut(toml, WITH_CONDUIT).inserts()).noneMatch(InsertHindrancesTest::isInConduit);
  }

  @ParameterizedTest
  @ValueSource(strings = {"solve", "nudge"})
  void aConduitMovesColumnsAndLosesNone(String whenBlocked) {
    String toml = GRID.formatted(whenBlocked);
    Layout without = laidOut(toml, InsertHindrances.ALL);
    Layout with = laidOut(toml, WITH_CONDUIT);
    assertThat(without.inserts()).anyMatch(InsertHindrancesTest::isInConduit);
    assertThat(with.inserts()).hasSameSizeAs(without.inserts());
    assertThat(findings(with, WITH_CONDUIT)).isEmpty();
  }

  @Test
  void aConduitIsToldInWords() {
    Layout asked = laidOut(GRID.formatted("report"), WITH_CONDUIT);
    Finding first = new InsertClear(new ClearOfConduit()).findings(asked).get(0);
    assertThat(first.sentence())
        .isEqualTo(
            "the flange of insert main 93/8 overlaps conduit C1 by 33 mm; 10 mm must remain");
    assertThat(first.suggestion()).isEqualTo("move it away by 43 mm");
    Layout dropped = laidOut(GRID.formatted("drop"), WITH_CONDUIT);
    assertThat(dropped.facets().get(0).omissions())
        .extracting(Omission::reason)
        .contains("its flange would be too near to C1");
  }

  static List<Hindrance> eachBeforeTheInserts() {
    return WITH_CONDUIT.stream().filter(one -> !one.comesLater()).toList();
  }

  /** With a single hindrance in the list, so that no other leaves anything out. */
  @ParameterizedTest
  @MethodSource("eachBeforeTheInserts")
  void whatIsLeftOutIsWhatTheRuleReports(Hindrance hindrance) {
    List<Hindrance> alone = List.of(hindrance);
    List<Finding> reported = findings(laidOut(LINED.formatted("report"), alone), alone);
    Layout dropped = laidOut(LINED.formatted("drop"), alone);
    assertThat(reported).isNotEmpty();
    assertThat(omitted(dropped))
        .containsExactlyInAnyOrderElementsOf(
            reported.stream().map(Finding::place).distinct().toList());
    assertThat(findings(dropped, alone)).isEmpty();
  }

  /** However lines and members are moved, nothing that is kept lies where it may not. */
  @ParameterizedTest
  @ValueSource(strings = {"shift", "nudge", "solve", "drop"})
  void nothingKeptIsInTheWay(String whenBlocked) {
    Layout layout = laidOut(LINED.formatted(whenBlocked), WITH_CONDUIT);
    assertThat(layout.inserts()).hasSizeGreaterThan(50);
    assertThat(findings(layout, WITH_CONDUIT)).isEmpty();
  }
}
