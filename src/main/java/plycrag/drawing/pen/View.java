package plycrag.drawing.pen;

import java.util.List;
import java.util.function.Supplier;
import plycrag.document.Drawing;

/**
 * A view, drawn when it is first asked for. What is on pages is kept, since the book and the
 * printed set show the same; what a single file shows is not, since a hall has thousands of those.
 */
public final class View {
  private final ViewKind kind;
  private final String name;
  private final String subject;
  private final Supplier<Drawing> drawing;
  private final Supplier<List<Drawing>> pages;

  /** A view that goes on one page. */
  public View(ViewKind kind, String name, String subject, Supplier<Drawing> maker) {
    this.kind = kind;
    this.name = name;
    this.subject = subject;
    this.drawing = kind.isOnPages() ? new Once<>(maker) : maker;
    this.pages = () -> List.of(drawing());
  }

  /** A view that is whole in files and goes on several pages. */
  public View(ViewKind kind, String name, Supplier<Drawing> whole, Supplier<List<Drawing>> pages) {
    this.kind = kind;
    this.name = name;
    this.subject = "";
    this.drawing = new Once<>(whole);
    this.pages = new Once<>(pages);
  }

  /** What it is. */
  public ViewKind kind() {
    return kind;
  }

  /** The name of its files, without folder and ending. */
  public String name() {
    return name;
  }

  /**
   * Of what it is: the name of a facet, for a run its lowest; the mark of a stock sheet or of a
   * gusset; empty where it is of the whole wall.
   */
  public String subject() {
    return subject;
  }

  /** The whole of it. */
  public Drawing drawing() {
    return drawing.get();
  }

  /** What goes on pages, one drawing each; none of a kind that is on no page. */
  public List<Drawing> pages() {
    return kind.isOnPages() ? pages.get() : List.of();
  }
}
