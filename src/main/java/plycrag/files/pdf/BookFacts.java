package plycrag.files.pdf;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.Book;
import plycrag.document.TextSize;
import plycrag.document.WallPage.Fact;

/** Figures in rows, each above its name. */
final class BookFacts {
  private static final double BETWEEN = 7;
  private static final double ROWS_APART = 2;

  private final Column column;
  private final List<List<Fact>> rows = new ArrayList<>();

  BookFacts(Column column, Book.Facts facts) {
    this.column = column;
    double x = 0;
    rows.add(new ArrayList<>());
    for (Fact fact : facts.facts()) {
      if (x > 0 && x + width(fact) > column.paper().column()) {
        rows.add(new ArrayList<>());
        x = 0;
      }
      rows.get(rows.size() - 1).add(fact);
      x += width(fact) + BETWEEN;
    }
  }

  private static double width(Fact fact) {
    return Math.max(wide(TextStyle.FACT, fact.value()), wide(TextStyle.TABLE, fact.name()));
  }

  private static double wide(TextStyle style, String text) {
    return TextSize.width(text, TextSize.CAPITALS * style.size()) + style.stroke();
  }

  /** The height that they take, mm. */
  double height() {
    return rows.size() * (TextStyle.FACT.leading() + TextStyle.TABLE.leading() + ROWS_APART);
  }

  void set() {
    column.room(height());
    for (List<Fact> row : rows) {
      double x = column.paper().left();
      double top = column.y();
      for (Fact fact : row) {
        double name = top - TextStyle.FACT.leading() - TextStyle.TABLE.drop();
        column.leaf().words(TextStyle.FACT, x, top - TextStyle.FACT.drop(), fact.value());
        column.leaf().words(TextStyle.TABLE, x, name, fact.name());
        x += width(fact) + BETWEEN;
      }
      column.down(height() / rows.size());
    }
  }
}
