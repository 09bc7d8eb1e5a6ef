package plycrag.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FindingGroupTest {
  private static Finding insert(String facet, String place, String member, String sentence) {
    return new Finding(
        "insert-timber",
        Severity.ERROR,
        new Place.OnFacet(facet, 100, 100),
        facet + " " + place,
        member,
        Optional.of(new Measure(-8, 4)),
        "the flange of insert " + facet + " " + place + sentence,
        "move it away by 12 mm, or stud " + member + " left by 12 mm");
  }

  private static Finding overlapping(String facet, String place, String member) {
    return insert(facet, place, member, " overlaps " + member + " by 8 mm");
  }

  private static Finding plain(Severity severity, String sentence) {
    return new Finding(
        "room-fits", severity, new Place.WholeWall(), "", "", Optional.empty(), sentence, "");
  }

  private static List<String> sentences(Finding... findings) {
    return FindingGroup.of(List.of(findings)).stream().map(FindingGroup::sentence).toList();
  }

  @Test
  void saysOfOneFindingWhatItSays() {
    assertThat(sentences(overlapping("main", "10/30", "ST4")))
        .containsExactly("the flange of insert main 10/30 overlaps ST4 by 8 mm");
  }

  @Test
  void tellsEqualFindingsWithTheirCountAndFirstPlaces() {
    assertThat(
            sentences(
                overlapping("main", "10/30", "ST4"),
                overlapping("main", "10/50", "ST4"),
                overlapping("main", "50/30", "ST5"),
                overlapping("kick", "10/30", "ST14"),
                overlapping("kick", "10/50", "ST14")))
        .containsExactly(
            "the flange of insert main 10/30 overlaps ST4 by 8 mm (5 times: main 10/30, main 10/50,"
                + " main 50/30 and 2 more)");
  }

  @Test
  void keepsApartWhatIsNotEqual() {
    Finding[] findings = {
      overlapping("main", "10/30", "ST4"),
      insert("main", "10/50", "ST4", " overlaps ST4 by 9 mm"),
      plain(Severity.ERROR, "the wall is too high"),
      plain(Severity.WARNING, "the wall is too high")
    };
    assertThat(sentences(findings)).hasSize(4);
  }

  /** Where a group stands is where its first finding did, so that errors stay first. */
  @Test
  void keepsTheOrder() {
    assertThat(
            sentences(
                plain(Severity.ERROR, "one"),
                plain(Severity.ERROR, "other"),
                plain(Severity.ERROR, "one")))
        .containsExactly("one (2 times)", "other");
  }

  @Test
  void countsPlacesThatHaveOneName() {
    Finding edge =
        new Finding(
            "seam-backing",
            Severity.ERROR,
            new Place.OnFacet("main", 100, 100),
            "P6",
            "",
            Optional.empty(),
            "45 mm of an edge of piece P6 has no timber behind it",
            "");
    assertThat(sentences(edge, edge))
        .containsExactly("45 mm of an edge of piece P6 has no timber behind it (2 times)");
  }

  /** The size of a bolt is no mark. */
  @Test
  void doesNotTakeSizesForMarks() {
    assertThat(sentences(plain(Severity.NOTE, "an M10 bolt"), plain(Severity.NOTE, "an M12 bolt")))
        .hasSize(2);
    assertThat(
            sentences(
                plain(Severity.NOTE, "P1 lies on PL2"), plain(Severity.NOTE, "P3 lies on PL4")))
        .containsExactly("P1 lies on PL2 (2 times)");
  }
}
