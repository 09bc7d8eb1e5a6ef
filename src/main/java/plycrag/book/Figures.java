package plycrag.book;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plycrag.document.Book.Figure;
import plycrag.drawing.Portfolio;
import plycrag.drawing.pen.View;
import plycrag.drawing.pen.ViewKind;

/**
 * Takes views from the portfolio for the book, page by page; none where there is none. Remembers
 * which have found their place, so that the book can show the others at its end.
 */
final class Figures {
  private final Portfolio portfolio;
  private final Set<View> placed = new HashSet<>();

  Figures(Portfolio portfolio) {
    this.portfolio = portfolio;
  }

  /** All views of a kind. */
  List<Figure> of(ViewKind kind, String caption) {
    return figures(views(kind), caption, false);
  }

  /** Those of one facet, run or sheet. */
  List<Figure> of(ViewKind kind, String subject, String caption) {
    return figures(views(kind, subject), caption, false);
  }

  /** All views of a kind, to which the parts' lines in the lists lead. */
  List<Figure> ofParts(ViewKind kind, String caption) {
    return figures(views(kind), caption, true);
  }

  /** Those of one facet, run or sheet, to which the parts' lines in the lists lead. */
  List<Figure> ofParts(ViewKind kind, String subject, String caption) {
    return figures(views(kind, subject), caption, true);
  }

  /** Views on pages that have no place so far. */
  List<Figure> others() {
    return portfolio.views().stream()
        .filter(view -> view.kind().isOnPages() && !placed.contains(view))
        .flatMap(view -> figures(List.of(view), caption(view), false).stream())
        .toList();
  }

  private static String caption(View view) {
    return view.subject().isEmpty()
        ? view.kind().word() + "."
        : view.kind().word() + ": " + view.subject() + ".";
  }

  private List<View> views(ViewKind kind) {
    return placed(portfolio.views(kind));
  }

  private List<View> views(ViewKind kind, String subject) {
    return placed(portfolio.views(kind, subject));
  }

  private List<View> placed(List<View> views) {
    placed.addAll(views);
    return views;
  }

  private static List<Figure> figures(List<View> views, String caption, boolean isOfParts) {
    return views.stream()
        .flatMap(view -> view.pages().stream())
        .map(page -> new Figure(page, caption, isOfParts))
        .toList();
  }
}
