package plycrag.book;

import java.util.List;
import plycrag.document.Book.Figure;
import plycrag.drawing.Portfolio;
import plycrag.drawing.pen.View;
import plycrag.drawing.pen.ViewKind;

/** Takes views from the portfolio for the book, page by page; none where there is none. */
final class Figures {
  private final Portfolio portfolio;

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

  private List<View> views(ViewKind kind) {
    return portfolio.views(kind);
  }

  private List<View> views(ViewKind kind, String subject) {
    return portfolio.views(kind, subject);
  }

  private static List<Figure> figures(List<View> views, String caption, boolean isOfParts) {
    return views.stream()
        .flatMap(view -> view.pages().stream())
        .map(page -> new Figure(page, caption, isOfParts))
        .toList();
  }
}
