package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.PaperSize;
import plycrag.document.Print;
import plycrag.document.Xy;
import plycrag.wall.Output.Paper;

/**
 * All views to be printed, each at its own scale on the smallest paper that holds it, in a frame
 * with a title block.
 */
public final class PrintedSet {
  /** Frame on the side where sheets are filed (ISO 5457, from memory), mm. */
  private static final double FILED = 20;

  /** Frame on the other sides, mm. */
  private static final double FRAME = 10;

  /** From the frame to the view, mm. */
  private static final double GAP = 3;

  /** Half a pen, and a little, around what is drawn, mm. */
  private static final double PEN = 0.5;

  private final CheckedLayout checked;
  private final Paper paper;
  private final List<Leaf> leaves = new ArrayList<>();

  private PrintedSet(CheckedLayout checked, Paper paper, List<View> views) {
    this.checked = checked;
    this.paper = paper;
    for (View view : views) {
      view.pages().forEach(page -> leaves.add(new Leaf(view, page)));
    }
  }

  /** What a page shows of a view. */
  private record Leaf(View view, Drawing drawing) {}

  /**
   * The pages of views, in their order.
   *
   * @param paper the smallest that may be used
   * @param views one of them on pages at least
   */
  public static Print of(CheckedLayout checked, Paper paper, List<View> views) {
    return new PrintedSet(checked, paper, views).print();
  }

  private Print print() {
    String wall = checked.layout().wall().name();
    List<Print.Page> pages = new ArrayList<>();
    for (Leaf leaf : leaves) {
      pages.add(page(leaf, pages.size() + 1));
    }
    return new Print(wall + ": drawings", pages);
  }

  private Print.Page page(Leaf leaf, int number) {
    Drawing drawing = cropped(leaf.drawing());
    double width = drawing.extent().width() / drawing.scale();
    double height = drawing.extent().height() / drawing.scale();
    PaperSize size = paper(width, height);
    double left = FILED + (size.width() - FILED - FRAME - width) / 2;
    double room = size.height() - 2 * FRAME - TitleBlock.HEIGHT;
    double low = FRAME + TitleBlock.HEIGHT + (room - height) / 2;
    return new Print.Page(
        leaf.view().name(),
        size.width(),
        size.height(),
        List.of(
            new Print.Placed(frame(leaf, size, number), new Xy(0, 0)),
            new Print.Placed(drawing, new Xy(left, low))));
  }

  /** The drawing without the empty paper around it. */
  private static Drawing cropped(Drawing drawing) {
    Envelope ink = Inked.box(drawing);
    ink.expandBy(PEN * drawing.scale());
    Extent extent = new Extent(ink.getMinX(), ink.getMinY(), ink.getMaxX(), ink.getMaxY());
    return new Drawing(drawing.title(), drawing.scale(), extent, drawing.shapes());
  }

  /** The smallest paper that holds a view; paper from a roll if none does. */
  private PaperSize paper(double width, double height) {
    double across = width + FILED + FRAME + 2 * GAP;
    double up = height + 2 * FRAME + TitleBlock.HEIGHT + 2 * GAP;
    return Papers.from(paper).stream()
        .filter(size -> across <= size.width() && up <= size.height())
        .findFirst()
        .orElseGet(() -> new PaperSize(Math.max(across, FILED + TitleBlock.WIDTH + FRAME), up));
  }

  private Drawing frame(Leaf leaf, PaperSize size, int number) {
    Sketch sketch = new Sketch(1);
    double right = size.width() - FRAME;
    double high = size.height() - FRAME;
    sketch.outline(
        Layers.OUTLINE,
        List.of(
            new Xy(FILED, FRAME), new Xy(right, FRAME), new Xy(right, high), new Xy(FILED, high)));
    View view = leaf.view();
    Drawing drawing = leaf.drawing();
    TitleBlock.Entries entries =
        new TitleBlock.Entries(
            checked.layout().wall().name(),
            title(drawing),
            view.kind().word(),
            view.name(),
            drawing.scale(),
            checked.layout().wall().tape().unit().word(),
            number + " of " + leaves.size());
    new TitleBlock(sketch, right, FRAME).draw(entries, Papers.isAmerican(paper));
    return sketch.drawing(view.name(), new Extent(0, 0, size.width(), size.height()));
  }

  /** The title without the wall's name before it. */
  private String title(Drawing drawing) {
    String before = checked.layout().wall().name() + ": ";
    String title = drawing.title();
    return title.startsWith(before) ? title.substring(before.length()) : title;
  }
}
