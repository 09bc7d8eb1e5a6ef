package plycrag.layout.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import plycrag.Walls;
import plycrag.layout.facet.FacetLayout;

/** Densities and symmetry. */
class PatternsTest {
  private static final String FADING =
      "when-blocked = \"report\"\npitch-up = 100\ntop-pitch-up = 300";

  private static FacetLayout facet(double width, double length, String inserts) {
    return Walls.laidOut(
            "[[facet]]\nwidth = "
                + width
                + "\nlength = "
                + length
                + "\n[frame]\nstud-spacing = 600\n[inserts]\n"
                + inserts
                + "\n")
        .facets()
        .get(0);
  }

  /** By hand: 2.4 by 2 m are 4.8 m², of which 25 a square metre are 120. */
  @Example
  void makesADensityOnTheFacet() {
    PatternOutcome setting =
        facet(2400, 2000, "pattern = \"density\"\ndensity = 25").settings().get(0);
    assertThat(setting.asked()).isCloseTo(120, within(6));
  }

  /** By hand: a sheet of 2440 by 1220 mm is 2.9768 m², so 4.8 m² are 1.612 sheets of 70: 113. */
  @Example
  void makesADensityOnASheet() {
    PatternOutcome setting =
        facet(2400, 2000, "pattern = \"density\"\ndensity = 70\ndensity-per = \"sheet\"")
            .settings()
            .get(0);
    assertThat(setting.asked()).isCloseTo(113, within(6));
  }

  @Property(tries = 60)
  void aDensityIsHeldAsCloselyAsWholeLinesAllow(
      @ForAll @IntRange(min = 1200, max = 4800) int width,
      @ForAll @IntRange(min = 1200, max = 3600) int length,
      @ForAll @IntRange(min = 10, max = 40) int density) {
    FacetLayout facet =
        facet(
            width, length, "when-blocked = \"drop\"\npattern = \"density\"\ndensity = " + density);
    double wanted = density * width * length / 1e6;
    PatternOutcome.OfAxis columns = facet.settings().get(0).axes().get(0);
    assertThat((double) facet.settings().get(0).asked())
        .isCloseTo(wanted, within(columns.count() / 2.0 + 1e-6));
  }

  private static Set<String> places(List<Insert> inserts, double width, boolean mirrored) {
    Set<String> places = new TreeSet<>();
    for (Insert insert : inserts) {
      double u = insert.centre().getX();
      places.add(Math.round(mirrored ? width - u : u) + " " + Math.round(insert.centre().getY()));
    }
    return places;
  }

  @Property(tries = 60)
  void symmetryHoldsWhateverIsInTheWay(
      @ForAll @IntRange(min = 800, max = 3000) int width,
      @ForAll @IntRange(min = 90, max = 260) int pitch,
      @ForAll boolean offset) {
    FacetLayout facet =
        facet(
            width,
            1200,
            "symmetry = \"left-right\"\npattern = \""
                + (offset ? "offset" : "grid")
                + "\"\npitch-across = "
                + pitch);
    Set<String> omitted =
        places(facet.omissions().stream().map(Omission::insert).toList(), width, false);
    Set<String> left = places(facet.inserts(), width, false);
    left.addAll(omitted);
    Set<String> right = places(facet.inserts(), width, true);
    right.addAll(places(facet.omissions().stream().map(Omission::insert).toList(), width, true));
    assertThat(left).isNotEmpty();
    if (width % 2 == 0) {
      assertThat(left).isEqualTo(right);
    }
    assertThat(facet.settings().get(0).axes().get(0).settled())
        .isEqualTo(facet.settings().get(0).axes().get(0).members());
  }

  /**
   * By hand: from 100 mm, where the pitch is 100 + 200 * 100 / 2000 = 110 mm, the next row is at
   * 210, where it is 121 mm, and so on.
   */
  @Example
  void aGridThinsOutUpward() {
    assertThat(rows(facet(1200, 2000, FADING)).subList(0, 4)).containsExactly(100, 210, 331, 464);
  }

  @Property(tries = 60)
  void rowsOfAFadingGridNeverComeNearerUpward(
      @ForAll @IntRange(min = 60, max = 200) int below,
      @ForAll @IntRange(min = 0, max = 400) int more,
      @ForAll @IntRange(min = 600, max = 4000) int length,
      @ForAll boolean offset) {
    List<Integer> rows =
        rows(
            facet(
                800,
                length,
                "when-blocked = \"report\"\npattern = \""
                    + (offset ? "offset" : "grid")
                    + "\"\npitch-up = "
                    + below
                    + "\ntop-pitch-up = "
                    + (below + more)));
    assertThat(rows.get(0)).isEqualTo(100);
    for (int row = 1; row < rows.size(); row++) {
      double asked = below + more * (double) rows.get(row - 1) / length;
      assertThat((double) rows.get(row) - rows.get(row - 1)).isCloseTo(asked, within(0.5));
    }
    int top = rows.get(rows.size() - 1);
    assertThat(top + below + more).isGreaterThan(length - 101);
  }

  private static List<Integer> rows(FacetLayout facet) {
    return facet.inserts().stream()
        .map(insert -> (int) Math.round(insert.centre().getY()))
        .distinct()
        .sorted()
        .toList();
  }

  @Example
  void aScatterMayBeSymmetricToo() {
    FacetLayout facet = facet(2400, 1200, "symmetry = \"left-right\"\npattern = \"scatter\"");
    assertThat(facet.inserts()).hasSizeGreaterThan(20);
    assertThat(places(facet.inserts(), 2400, false)).isEqualTo(places(facet.inserts(), 2400, true));
  }
}
