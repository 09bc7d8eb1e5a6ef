package plycrag.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import plycrag.Walls;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.layout.Layout;

/**
 * What one rule found, as the inspection passes it on.
 *
 * @param findings in order
 */
public record Found(List<Finding> findings) {
  /**
   * A plumb wall of one sheet on the floor: 1200 by 1200 mm, plates at 0 and 1155 mm up, studs of
   * 45 mm at 0, 577.5 and 1155 mm across. Texts that follow may add further tables.
   */
  public static final String BAY =
      """
      [wall]
      name = "Bay"
      [[facet]]
      width = 1200
      length = 1200
      [frame]
      section = [45, 90]
      stud-spacing = 600
      """;

  /**
   * Two pieces side by side: they end at 600 mm and begin at 602 mm, and what backs the seam stands
   * about 601 mm. Texts that follow add to the frame.
   */
  public static final String SEAMED =
      """
      [wall]
      name = "Seam"
      [[facet]]
      width = 1202
      length = 600
      [sheet]
      length = 600
      width = 600
      [frame]
      stud-spacing = 700
      """;

  /** The first wall with inserts on given lines. */
  public static String bay(String columns, String rows, String... more) {
    return BAY
        + "[inserts]\npattern = \"lines\"\ncolumns = ["
        + columns
        + "]\nrows = ["
        + rows
        + "]\n"
        + String.join("\n", more)
        + "\n";
  }

  /**
   * What a rule of a name finds on the wall of a parameter file, with inserts where it asks for
   * them unless it says otherwise.
   */
  public static Found by(String rule, String toml) {
    return by(rule, Walls.laidOut(Walls.asAsked(toml)));
  }

  /** What a rule of a name finds on a layout. */
  public static Found by(String rule, Layout layout) {
    return new Found(
        Inspection.of(layout).findings().stream().filter(one -> one.rule().equals(rule)).toList());
  }

  /** Asserts that it found nothing. */
  public void isNothing() {
    assertThat(findings).isEmpty();
  }

  /** Asserts how much it found. */
  public Found times(int count) {
    assertThat(findings).hasSize(count);
    return this;
  }

  /** Asserts that nothing found forbids making the wall. */
  public Found hasNoError() {
    assertThat(findings).noneMatch(Finding::isError);
    return this;
  }

  /** Asserts the marks of the first finding. */
  public Found between(String first, String second) {
    assertThat(head().first()).isEqualTo(first);
    assertThat(head().second()).isEqualTo(second);
    return this;
  }

  /** Asserts the lengths of the first finding, mm. */
  public Found measured(double found, double required) {
    assertThat(head().measure().orElseThrow().found()).isCloseTo(found, within(1e-6));
    assertThat(head().measure().orElseThrow().required()).isCloseTo(required, within(1e-6));
    return this;
  }

  /** Asserts the place of the first finding on the facet main, mm. */
  public Found at(double u, double v) {
    assertThat(head().place()).isEqualTo(new Place.OnFacet("main", u, v));
    return this;
  }

  /** Asserts what the first finding says. */
  public Found says(String sentence) {
    assertThat(head().sentence()).isEqualTo(sentence);
    return this;
  }

  /** Asserts what the first finding suggests. */
  public Found suggests(String suggestion) {
    assertThat(head().suggestion()).isEqualTo(suggestion);
    return this;
  }

  /** Asserts whether the first finding forbids making the wall. */
  public Found isError(boolean error) {
    assertThat(head().isError()).isEqualTo(error);
    return this;
  }

  private Finding head() {
    assertThat(findings).as("findings").isNotEmpty();
    return findings.get(0);
  }
}
