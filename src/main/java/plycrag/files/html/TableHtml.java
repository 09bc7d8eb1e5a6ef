package plycrag.files.html;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plycrag.document.Cell;
import plycrag.document.Table;

/** A table for reading: numbers to the right, the first cell of a row its head. */
final class TableHtml {
  private final Table table;
  private final PartLinks links;

  /**
   * Writes one table.
   *
   * @param table what is shown
   * @param links how parts are found
   */
  TableHtml(Table table, PartLinks links) {
    this.table = table;
    this.links = links;
  }

  /** The table in a frame that scrolls sideways where the window is narrow. */
  String html() {
    String caption = HtmlText.of(table.title());
    String rows = table.rows().stream().map(this::row).collect(Collectors.joining());
    return HtmlText.fill(
        """
        <div class="wide" tabindex="0" role="region" aria-label="%s"><table>
        <caption><span>%s</span></caption>
        <thead><tr>%s</tr></thead>
        <tbody>
        %s</tbody>
        </table></div>
        """,
        caption, caption, heads(), rows);
  }

  private String heads() {
    return IntStream.range(0, table.columns().size())
        .mapToObj(this::head)
        .collect(Collectors.joining());
  }

  private String head(int column) {
    String text = HtmlText.of(table.columns().get(column));
    return "<th scope=\"col\""
        + (table.isNumeric(column) ? " class=\"number\">" : ">")
        + text
        + "</th>";
  }

  private String row(List<Cell> cells) {
    return IntStream.range(0, cells.size())
        .mapToObj(column -> cell(cells.get(column), column))
        .collect(Collectors.joining("", "<tr>", "</tr>\n"));
  }

  private String cell(Cell cell, int column) {
    String open = column == 0 ? "<th scope=\"row\"" : "<td";
    String kind = cell.isNumber() ? " class=\"number\">" : ">";
    return open + kind + words(cell, column) + (column == 0 ? "</th>" : "</td>");
  }

  private String words(Cell cell, int column) {
    if (cell.text().equals(Ticks.BOX)) {
      return Ticks.box(HtmlText.of(table.columns().get(column)));
    }
    return cell instanceof Cell.Marks marks ? links.marks(marks) : HtmlText.of(cell.text());
  }
}
