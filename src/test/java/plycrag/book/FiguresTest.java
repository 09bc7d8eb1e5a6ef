package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.document.Book;
import plycrag.drawing.Portfolio;
import plycrag.drawing.pen.ViewKind;

class FiguresTest {
  /** A view that no chapter asks for is shown at the book's end all the same. */
  @Test
  void whatHasNoPlaceOfItsOwnIsNotLost() {
    Portfolio portfolio = Walls.portfolio(Path.of("params", "river-bay.toml"));
    Figures figures = new Figures(portfolio);
    int pages = (int) portfolio.views().stream().flatMap(view -> view.pages().stream()).count();
    assertThat(figures.others()).hasSize(pages);
    assertThat(figures.of(ViewKind.PLAN, "")).hasSize(1);
    assertThat(figures.of(ViewKind.FRAME, "nothing", "")).isEmpty();
    assertThat(figures.others())
        .hasSize(pages - 1)
        .extracting(Book.Figure::caption)
        .contains("Elevation: main.", "Framing elevation: main.", "Section: main.")
        .doesNotContain("Plan.");
  }
}
