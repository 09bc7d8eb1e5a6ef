package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.side;
import static plycrag.solve.support.Sections.site;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;

/** Timber of 40 by 100. */
class SupportSiteTest {
  private static final BackEdge LEANING = back("main", 37, 0, 300, 1500, 2300);
  private static final List<Double> FIVE = List.of(0.0, 400.0, 800.0, 1200.0, 1600.0);

  private static SupportSite onFive(double bay, double longest) {
    return site(Sections.timber(40, 100), FIVE, bay, longest, LEANING);
  }

  /** 800 at most: every second stud. One less: every stud. */
  @Test
  void asFewStationsAsTheBayAllows() {
    assertThat(onFive(800, 10_000).stations()).containsExactly(0.0, 800.0, 1600.0);
    assertThat(onFive(799, 10_000).stations()).isEqualTo(FIVE);
    assertThat(onFive(1600, 10_000).stations()).containsExactly(0.0, 1600.0);
  }

  /** Three stand anyhow within 1000: 600 and 600 rather than 900 and 300. */
  @Test
  void theyStandAsEvenlyAsTheStudsAllow() {
    List<Double> studs = List.of(0.0, 300.0, 600.0, 900.0, 1200.0);
    assertThat(site(studs, 1000, LEANING).stations()).containsExactly(0.0, 600.0, 1200.0);
  }

  /** A stud that is less than a timber's 40 from a station leaves no room for another. */
  @Test
  void aStudBesideAStationIsNone() {
    assertThat(site(List.of(0.0, 39.0, 600.0), 300, LEANING).stations())
        .containsExactly(0.0, 600.0);
    assertThat(site(List.of(0.0, 40.0, 600.0), 300, LEANING).stations())
        .containsExactly(0.0, 40.0, 600.0);
  }

  /** Studs within a millimetre of the stations bear them; at a millimetre they do not. */
  @Test
  void aFacetOutOfLineHasStationsOfItsOwn() {
    SupportSite site = site(List.of(0.0, 500.0, 1000.0), 600, LEANING);
    assertThat(site.stations(studded(0.5, 499.1, 1000.0))).containsExactly(0.0, 500.0, 1000.0);
    assertThat(site.stations(studded(0.0, 499.0, 1000.0))).containsExactly(0.0, 499.0, 1000.0);
    assertThat(site.stations(studded())).containsExactly(0.0, 500.0, 1000.0);
  }

  private static BackEdge studded(Double... studs) {
    return Sections.studded(LEANING, studs);
  }

  @Test
  void theWidestBayIsThatOfTheRunOrOfAnyFacet() {
    List<Double> studs = List.of(0.0, 500.0, 1000.0);
    assertThat(site(studs, 600, LEANING).widestBay()).isEqualTo(500);
    assertThat(site(studs, 600, LEANING, studded(100.0, 800.0)).widestBay()).isEqualTo(700);
    assertThat(SupportSite.widest(List.of(0.0, 300.0, 1000.0, 1200.0))).isEqualTo(700);
    assertThat(SupportSite.widest(List.of(5.0))).isZero();
    assertThat(SupportSite.widest(List.of())).isZero();
  }

  @Test
  void theHindmostMayBeAnUpperEnd() {
    assertThat(site(FIVE, 800, LEANING, back("slab", -10, 10, 0, -40, 300)).hindmost())
        .isEqualTo(-40);
    assertThat(site(FIVE, 800, back("low", 37, -7, 0, 0, 300), LEANING).hindmost()).isEqualTo(-7);
  }

  private static List<SupportTimber> ledgers(SupportSite site) {
    return site.along(TimberUse.LEDGER, site.stations(), -50, 200, 300, 40);
  }

  /** 1600 and a breadth are 1640 in one length, exactly. */
  @Test
  void levelTimberIsOneLengthWhereThatIsLongEnough() {
    assertThat(ledgers(onFive(400, 1640)))
        .extracting(Sections::side)
        .containsExactly("0 200, 1640 200, 1640 300, 0 300");
  }

  /** The last middle within 1220 is that of the station at 1200; what is left is 420. */
  @Test
  void lengthsMeetOnTheMiddleOfTheLastStationTheyReach() {
    List<SupportTimber> two = ledgers(onFive(400, 1220));
    assertThat(two)
        .extracting(Sections::side)
        .containsExactly(
            "0 200, 1220 200, 1220 300, 0 300", "1220 200, 1640 200, 1640 300, 1220 300");
    assertThat(two).allMatch(timber -> timber.use() == TimberUse.LEDGER && timber.depth() == 40);
    // 1219 reach 820 only, and from there the end
    assertThat(ledgers(onFive(400, 1219)))
        .extracting(Sections::side)
        .containsExactly("0 200, 820 200, 820 300, 0 300", "820 200, 1640 200, 1640 300, 820 300");
  }

  /** 500 reach one station further each time: 420, 820, 1220, and from there the end. */
  @Test
  void everyLengthReachesFromWhereItBegins() {
    assertThat(ledgers(onFive(400, 500)))
        .extracting(timber -> timber.outline().getEnvelopeInternal().getMaxX())
        .containsExactly(420.0, 820.0, 1220.0, 1640.0);
  }

  /** 500 do not reach from a station to the next: it is one length, which the rules tell of. */
  @Test
  void noLengthEndsOnTheStationWhereItBegins() {
    SupportSite far = site(Sections.timber(40, 100), List.of(0.0, 1000.0), 1000, 500, LEANING);
    assertThat(ledgers(far))
        .extracting(Sections::side)
        .containsExactly("0 200, 1040 200, 1040 300, 0 300");
  }

  /** The station at 1200 begins before the joint at 1220 and ends on the first. */
  @Test
  void aStationEndsOnTheLedgerInFrontOfItsLeftSide() {
    SupportSite site = onFive(400, 1220);
    List<SupportTimber> two = ledgers(site);
    assertThat(site.under(1200, two)).isSameAs(two.get(0));
    assertThat(site.under(1220, two)).isSameAs(two.get(1));
    assertThat(site.under(1600, two)).isSameAs(two.get(1));
  }

  /**
   * 4 up and 3 out for 5 along the back. The middle of a tie is 40 (a plate) + 120 + 50 = 210 below
   * the edge along it, 168 down: its top is at 2300 - 168 + 50. 100 lower along the back are 80
   * down.
   */
  @Test
  void somethingLevelEndsBelowThePlate() {
    SupportSite site = onFive(400, 5000);
    assertThat(site.level(LEANING)).isEqualTo(2182);
    assertThat(site.level(LEANING.lowered(100))).isEqualTo(2102);
    // 2182.9, down to the marks
    assertThat(site.level(back("main", 37, 0, 300.9, 1500, 2300.9))).isEqualTo(2182);
  }

  /** On a frame of less than twice 210 it ends in the middle, and no lower. */
  @Test
  void somethingLevelEndsInTheMiddleOfALowFrame() {
    SupportSite site = onFive(400, 5000);
    BackEdge low = back("kick", 0, 0, 100, 0, 400);
    assertThat(site.level(low)).isEqualTo(250 + 50);
    assertThat(site.level(low.lowered(100))).isEqualTo(250 + 50);
    assertThat(site.level(back("kick", 0, 0, 100, 0, 520))).isEqualTo(520 - 210 + 50);
  }

  /** Each height of what is level is that of the edge that is told for it, and of no lower one. */
  @Test
  void theEdgeThatIsToldForALevelIsTheLowest() {
    SupportSite site = onFive(400, 5000);
    BackEdge kick = back("kick", 0, 0, 100, 0, 400);
    // 350 is its middle at 300, 200 above its foot, so 400 high; 510 is 460 and 210 below the edge
    assertThat(site.edgeFor(kick, 350)).isEqualTo(500);
    assertThat(site.edgeFor(kick, 510)).isEqualTo(670);
    assertThat(site.edgeFor(kick, 509.1)).isEqualTo(670);
    assertThat(site.level(back("kick", 0, 0, 100, 0, 500))).isEqualTo(350);
    assertThat(site.level(back("kick", 0, 0, 100, 0, 499))).isLessThan(350);
    assertThat(site.level(back("kick", 0, 0, 100, 0, 670))).isEqualTo(510);
    assertThat(site.level(back("kick", 0, 0, 100, 0, 669))).isLessThan(510);
  }

  /** 40 + 120 below the edge along the back are 96 back; 100 lower 60 more; half of 125, 37.5. */
  @Test
  void somethingUprightEndsBelowThePlate() {
    SupportSite site = onFive(400, 5000);
    assertThat(site.upright(LEANING)).isEqualTo(1404);
    assertThat(site.upright(LEANING.lowered(100))).isEqualTo(1344);
    assertThat(site.upright(back("low", 37, 0, 0, 75, 100))).isEqualTo(37.5);
  }

  /** From y = -160 level between 2200 and 2300 up to 1425 and 1500 on the back. */
  @Test
  void aTieEndsFlatOnTheBack() {
    SupportSite site = onFive(400, 5000);
    SupportTimber tie = site.tie(400, -160, LEANING, 2300);
    assertThat(side(tie)).isEqualTo("-160 2200, 1425 2200, 1500 2300, -160 2300");
    assertThat(tie.depth()).isEqualTo(40);
    Meeting whole = site.onFrame(tie, LEANING, 2300);
    assertThat(Sections.words(whole)).isEqualTo("TIE on main at 1462.5 2250 along 100");
    Meeting part = whole.on(new SectionPlace(1481.25, 2275), 50);
    assertThat(Sections.words(part)).isEqualTo("TIE on main at 1481.25 2275 along 50");
  }

  /** What lies behind a station's plane lies to its right, behind one along the wall away. */
  @Test
  void planesStandWhereTheyShould() {
    SupportSite site = onFive(400, 5000);
    assertPlace(site.station(500).toRoom(new Vector3(30, 70, 40)), 540, 30, 70);
    assertPlace(site.along(-200).toRoom(new Vector3(30, 70, 40)), 30, -240, 70);
    SupportSite turned =
        new SupportSite(
            new FloorAxes(1000, 0, 90),
            List.of(LEANING),
            FIVE,
            Sections.timber(40, 100),
            400,
            5000,
            Sections.TAPE);
    // x of the run is y of the room, y of the run is -x
    assertPlace(turned.station(500).toRoom(new Vector3(30, 70, 40)), 970, 540, 70);
  }

  private static void assertPlace(Vector3 found, double x, double y, double z) {
    assertThat(found.minus(new Vector3(x, y, z)).length()).isCloseTo(0, within(1e-9));
  }

  /** A tie of 1160 along its lower side, 1260 along its upper, 100 by 40. */
  @Test
  void aBodyReachesItsDepthBehindItsSide() {
    BackEdge plain = back("main", 45, 0, 0, 1200, 1200);
    SupportTimber tie = site(FIVE, 400, plain).tie(400, -60, plain, 1200);
    assertExtent(tie, Vector3::x, 400, 440);
    assertExtent(tie, Vector3::y, -60, 1200);
    assertExtent(tie, Vector3::z, 1100, 1200);
  }

  private static void assertExtent(
      SupportTimber timber, ToDoubleFunction<Vector3> axis, double low, double high) {
    Solid body =
        Solid.between(timber.outline(), 0, timber.outline(), timber.depth())
            .mapped(timber.plane()::toRoom);
    List<Double> places =
        Stream.of(body.near(), body.far())
            .flatMap(List::stream)
            .map(axis::applyAsDouble)
            .sorted()
            .toList();
    assertThat(places.get(0)).isCloseTo(low, within(1e-9));
    assertThat(places.get(places.size() - 1)).isCloseTo(high, within(1e-9));
  }
}
