package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;

class StandingUpTest {
  private static String written(String facets) {
    CheckedLayout checked = Walls.judged("[wall]\nwidth = 1200\n" + facets);
    Figures figures = new Figures(Walls.portfolio(checked));
    return new StandingUp(checked, figures).blocks().toString();
  }

  @Test
  void oneFrameNeedsAndSeveralNeed() {
    String lower = "[[facet]]\nname = \"low\"\nlength = 1200\n";
    String upper = "[[facet]]\nname = \"high\"\nangle = 20\nlength = 1200\n";
    assertThat(written(lower)).contains("The frame of low needs 1");
    assertThat(written(lower + upper)).contains("The frames joined of low, high need 2");
  }
}
