package plycrag.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;

/** What holds for the rules together; each has a test of its own beside its package. */
class InspectionTest {
  private static final String FACET = "[[facet]]\nwidth = 1200\nlength = 1200\n";
  private static final String LINES =
      "[inserts]\npattern = \"lines\"\ncolumns = [100, 200]\nrows = [100, 200]\nsetback = 50\n";

  @Test
  void aGoodWallPassesThemAll() {
    assertThat(Walls.judged(FACET + LINES).findings()).isEmpty();
  }

  @Test
  void everyRuleHasANameAndAPromise() {
    List<String> names = Inspection.rules().stream().map(Rule::name).toList();
    assertThat(names).doesNotHaveDuplicates().allMatch(name -> name.matches("[a-z]+(-[a-z]+)*"));
    assertThat(Inspection.rules()).allMatch(rule -> rule.promise().endsWith("."));
  }

  /** What is left out and what the rules would report are the same inserts. */
  @Test
  void droppingLeavesNothingToReport() {
    String grid = FACET + "[inserts]\npitch-across = 70\npitch-up = 70\nsetback = 60\n";
    CheckedLayout dropped = Walls.judged(grid + "when-blocked = \"drop\"\n");
    assertThat(dropped.isApproved()).isTrue();
    List<String> left =
        dropped.findings().stream().map(Finding::first).distinct().sorted().toList();
    List<String> reported =
        Walls.judged(Walls.asAsked(grid)).findings().stream()
            .filter(Finding::isError)
            .map(Finding::first)
            .distinct()
            .sorted()
            .toList();
    assertThat(left).isNotEmpty().isEqualTo(reported);
  }
}
