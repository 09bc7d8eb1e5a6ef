package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.book.BuildBook;
import plycrag.check.CheckedLayout;
import plycrag.document.Book;
import plycrag.document.Drawing;
import plycrag.drawing.Portfolio;
import plycrag.drawing.pen.ViewKind;
import plycrag.prices.PriceList;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;

/** The book shows the pages of the printed set that its reader needs, and draws none again. */
class BookFiguresAgreeTest {
  static List<Path> samples() {
    return TestFiles.samples();
  }

  /** What steps show one by one; gussets, which are true to scale on paper of their own alone. */
  private static final Set<ViewKind> IN_THE_SET_ALONE =
      EnumSet.of(
          ViewKind.EXPLODED_FRONT,
          ViewKind.EXPLODED_BACK,
          ViewKind.STANDING_FRONT,
          ViewKind.GUSSET);

  @ParameterizedTest
  @MethodSource("samples")
  void theBookShowsTheVeryDrawingsOfThePrintedSet(Path sample) {
    CheckedLayout checked = Walls.judged(sample);
    StickPlan plan = Walls.sticks(sample);
    Portfolio portfolio = Walls.portfolio(sample);
    ShoppingList shopping =
        ShoppingList.of(
            checked, plan, Walls.parameters(TestFiles.read(sample)).buying(), PriceList.empty());
    List<Drawing> figures =
        BuildBook.of(checked, plan, shopping, portfolio).sections().stream()
            .flatMap(section -> section.blocks().stream())
            .filter(Book.Figure.class::isInstance)
            .skip(1) // the picture of the wall, which is the book's own
            .map(block -> ((Book.Figure) block).drawing())
            .toList();
    List<Drawing> pages =
        portfolio.views().stream()
            .filter(view -> !IN_THE_SET_ALONE.contains(view.kind()))
            .flatMap(view -> view.pages().stream())
            .toList();
    assertThat(figures).hasSameSizeAs(pages);
    assertThat(same(figures).containsAll(pages)).isTrue();
  }

  private static Set<Drawing> same(Collection<Drawing> drawings) {
    Set<Drawing> same = Collections.newSetFromMap(new IdentityHashMap<>());
    same.addAll(drawings);
    return same;
  }
}
