package plycrag.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.document.Drawing;
import plycrag.drawing.pen.View;
import plycrag.drawing.pen.ViewKind;

class PortfolioTest {
  private static final String ROOM =
      """
      [[facet]]
      name = "Long side"
      length = 1200
      width = 1200
      [[facet]]
      name = "short side"
      beside = "Long side"
      turn = 90
      length = 1200
      width = 1200
      """;

  private final Portfolio portfolio = Walls.portfolio(Walls.judged(ROOM));

  /** All but the jig, which the templates draw. */
  @Test
  void theSamplesHaveViewsOfEveryKind() {
    Set<ViewKind> kinds = EnumSet.of(ViewKind.JIG);
    TestFiles.samples().stream()
        .flatMap(sample -> Walls.portfolio(sample).views().stream())
        .forEach(view -> kinds.add(view.kind()));
    assertThat(kinds).containsExactly(ViewKind.values());
  }

  @Test
  void noTwoViewsAreWrittenToOneFile() {
    assertThat(names(ViewKind::isForCad)).doesNotHaveDuplicates();
    assertThat(names(ViewKind::isPicture)).doesNotHaveDuplicates();
    assertThat(names(ViewKind::isOnPages))
        .doesNotHaveDuplicates()
        .contains("facet-long-side-front", "section-short-side", "corner-1");
  }

  private List<String> names(Predicate<ViewKind> kinds) {
    return portfolio.views().stream()
        .filter(view -> kinds.test(view.kind()))
        .map(View::name)
        .toList();
  }

  @Test
  void findsViewsByWhatTheyAreOf() {
    assertThat(portfolio.views(ViewKind.FRAME, "short side"))
        .extracting(View::name)
        .containsExactly("frame-short-side");
    assertThat(portfolio.views(ViewKind.FRAME, "S1")).isEmpty();
    assertThat(portfolio.views(ViewKind.STANDING_FRONT)).isEmpty();
  }

  @Test
  void whatIsOnPagesIsDrawnOnce() {
    for (View view : portfolio.views()) {
      List<Drawing> pages = view.pages();
      assertThat(pages.isEmpty()).isEqualTo(!view.kind().isOnPages());
      for (int at = 0; at < pages.size(); at++) {
        assertThat(view.pages().get(at)).isSameAs(pages.get(at));
      }
      if (view.kind().isOnPages()) {
        assertThat(view.drawing()).isSameAs(view.drawing());
      }
    }
  }
}
