package plycrag.document;

import java.util.List;

/**
 * Pages to be printed at true size.
 *
 * @param title what they are
 * @param pages in reading order, at least one
 */
public record Print(String title, List<Page> pages) {
  /** Copies the pages. */
  public Print {
    pages = List.copyOf(pages);
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("no page of " + title);
    }
  }

  /**
   * A page.
   *
   * @param name what a reader's list of pages calls it
   * @param width mm
   * @param height mm
   * @param drawings in the order in which they are drawn
   */
  public record Page(String name, double width, double height, List<Placed> drawings) {
    /** Copies the drawings; rejects paper without size. */
    public Page {
      drawings = List.copyOf(drawings);
      if (!(width > 0 && height > 0)) {
        throw new IllegalArgumentException("paper of " + width + " x " + height + " mm");
      }
    }
  }

  /**
   * A drawing on a page, at its own scale; nothing beyond its extent is printed.
   *
   * @param drawing what is printed
   * @param at where the lower left corner of its extent lies, mm from the page's lower left corner
   */
  public record Placed(Drawing drawing, Xy at) {}
}
