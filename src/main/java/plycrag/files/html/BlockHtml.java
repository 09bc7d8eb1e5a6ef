package plycrag.files.html;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import plycrag.document.Book;
import plycrag.document.Drawing;

/** The parts of a section. */
final class BlockHtml {
  private final Function<Drawing, String> figures;
  private final PartLinks links;

  /**
   * Writes the parts of one book.
   *
   * @param figures gives a drawing as an inline svg element
   * @param links how parts are found
   */
  BlockHtml(Function<Drawing, String> figures, PartLinks links) {
    this.figures = figures;
    this.links = links;
  }

  /** A part. */
  String html(Book.Block block) {
    if (block instanceof Book.Paragraph paragraph) {
      return "<p>" + HtmlText.of(paragraph.text()) + "</p>\n";
    }
    if (block instanceof Book.Caution caution) {
      return caution(caution);
    }
    if (block instanceof Book.Checklist checklist) {
      return ticked(checklist.items());
    }
    if (block instanceof Book.Points points) {
      return list("<ul>\n", points.items());
    }
    if (block instanceof Book.Listing listing) {
      return new TableHtml(listing.table(), links).html();
    }
    if (block instanceof Book.Link link) {
      String words = HtmlText.of(link.words());
      return HtmlText.fill("<p><a href=\"%s\">%s</a></p>\n", link.path(), words);
    }
    if (block instanceof Book.Facts facts) {
      return facts.facts().stream()
          .map(
              fact ->
                  HtmlText.fill(
                      "<div><dt>%s</dt><dd>%s</dd></div>\n",
                      HtmlText.of(fact.name()), HtmlText.of(fact.value())))
          .collect(Collectors.joining("", "<dl class=\"facts\">\n", "</dl>\n"));
    }
    if (block instanceof Book.Step step) {
      return step(step);
    }
    return figure((Book.Figure) block);
  }

  private String step(Book.Step step) {
    String picture = step.picture().map(this::picture).orElse("");
    String taken =
        step.taken().stream()
            .map(
                one ->
                    HtmlText.fill(
                        "<tr><th scope=\"row\">%s</th><td>%s</td></tr>\n",
                        HtmlText.of(one.count()), HtmlText.of(one.what())))
            .collect(Collectors.joining());
    String words =
        step.words().stream()
            .map(one -> "<p>" + HtmlText.of(one) + "</p>\n")
            .collect(Collectors.joining());
    return HtmlText.fill(
            "<div class=\"step\" id=\"step-%d\">\n<h3>%d. %s</h3>\n",
            step.number(), step.number(), HtmlText.of(step.heading()))
        + step.caution().map(BlockHtml::caution).orElse("")
        + "<div class=\"doing\">\n"
        + picture
        + "<div>\n"
        + (taken.isEmpty() ? "" : "<table class=\"taken\"><tbody>\n" + taken + "</tbody></table>\n")
        + words
        + (step.checks().isEmpty() ? "" : ticked(step.checks()))
        + "</div>\n</div>\n</div>\n";
  }

  private static String caution(Book.Caution caution) {
    return HtmlText.fill(
        "<p class=\"caution\"><strong>%s</strong> %s</p>\n",
        HtmlText.of(caution.word()), HtmlText.of(caution.text()));
  }

  private static String list(String start, List<String> items) {
    return items.stream()
        .map(item -> "<li>" + HtmlText.of(item) + "</li>\n")
        .collect(Collectors.joining("", start, "</ul>\n"));
  }

  private static String ticked(List<String> items) {
    return items.stream()
        .map(HtmlText::of)
        .map(Ticks::item)
        .collect(Collectors.joining("", "<ul class=\"checklist\">\n", "</ul>\n"));
  }

  private String figure(Book.Figure figure) {
    return HtmlText.fill(
        """
        <figure%s>
        %s<figcaption>%s</figcaption>
        </figure>
        """,
        links.anchor(figure), picture(figure.drawing()), HtmlText.of(figure.caption()));
  }

  /** A drawing in a frame that scrolls sideways where the window is narrow. */
  private String picture(Drawing drawing) {
    String picture = figures.apply(drawing);
    String role = picture.contains("<a ") ? "group" : "img";
    return HtmlText.fill(
        "<div class=\"wide\" tabindex=\"0\" role=\"%s\" aria-label=\"%s\">%s</div>\n",
        role, HtmlText.of(drawing.title()), picture);
  }
}
