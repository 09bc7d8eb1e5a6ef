package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.drawing.Portfolio;
import plycrag.drawing.pen.ViewKind;

class FiguresTest {
  @Test
  void viewsAreFoundByTheirKindAndByWhatTheyAreOf() {
    Portfolio portfolio = Walls.portfolio(Path.of("params", "river-bay.toml"));
    Figures figures = new Figures(portfolio);
    assertThat(figures.of(ViewKind.PLAN, "What it takes.")).hasSize(1);
    assertThat(figures.of(ViewKind.FRAME, "main", "")).hasSize(1);
    assertThat(figures.of(ViewKind.FRAME, "nothing", "")).isEmpty();
    assertThat(figures.ofParts(ViewKind.FRAME, "")).allMatch(figure -> figure.isOfParts());
  }
}
