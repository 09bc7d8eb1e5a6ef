package plycrag.document;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A drawing.
 *
 * <p>Places and radii are model millimetres; pen widths and text heights are millimetres on paper.
 * A format that is printed divides the model by the scale; a format that a CAD program reads keeps
 * the model and multiplies text heights by it.
 *
 * @param title what it shows, for a person and for a reader that cannot see it
 * @param scale n of 1:n, at least 1
 * @param extent what the page shows
 * @param shapes in the order in which they are drawn
 * @param remarks what a format that has comments says before all else, a line each
 */
public record Drawing(
    String title, int scale, Extent extent, List<Shape> shapes, List<String> remarks) {
  /** Copies the shapes and the remarks. */
  public Drawing {
    Objects.requireNonNull(extent);
    shapes = List.copyOf(shapes);
    remarks = List.copyOf(remarks);
    if (title.isBlank() || scale < 1) {
      throw new IllegalArgumentException("a drawing needs a title and a scale");
    }
  }

  /** A drawing without remarks. */
  public Drawing(String title, int scale, Extent extent, List<Shape> shapes) {
    this(title, scale, extent, shapes, List.of());
  }

  /** The same drawing with remarks. */
  public Drawing remarked(List<String> lines) {
    return new Drawing(title, scale, extent, shapes, lines);
  }

  /** The layers in use, in the order in which they first appear. */
  public Set<Layer> layers() {
    Set<Layer> layers = new LinkedHashSet<>();
    shapes.forEach(shape -> layers.add(shape.layer()));
    return layers;
  }
}
