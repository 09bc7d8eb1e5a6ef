package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tomlj.TomlArray;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;
import plycrag.wall.FacetPoint;

/** The corners of a simple polygon, in order round it, the first not repeated. */
public final class CornersKind implements Kind<List<FacetPoint>> {
  private final CornerKind each;
  private final int most;

  /**
   * Polygons of at most so many corners.
   *
   * @param each what each of them may be
   * @param most how many there may be; three at least
   */
  public CornersKind(CornerKind each, int most) {
    this.each = each;
    this.most = most;
  }

  @Override
  public Optional<List<FacetPoint>> read(Located value, Context context) {
    if (!(value.value() instanceof TomlArray)) {
      return refuseKind(value, context);
    }
    List<Located> elements = value.elements();
    if (elements.size() < 3 || elements.size() > most) {
      return context.refuse(
          value, "the list holds " + elements.size() + " corners", mayStand(context));
    }
    List<Optional<FacetPoint>> corners =
        elements.stream().map(element -> each.read(element, context)).toList();
    return corners.stream().allMatch(Optional::isPresent)
        ? simple(elements, corners.stream().map(Optional::get).toList(), context)
        : Optional.empty();
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Several(each.shape(), 3, most);
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "a list of 3 to " + most + " corners, each " + each.allowed(units);
  }

  private static Optional<List<FacetPoint>> simple(
      List<Located> elements, List<FacetPoint> corners, Context context) {
    int count = corners.size();
    for (int at = 0; at < count; at++) {
      if (!turns(corners, at)) {
        return context.refuse(
            elements.get(at),
            "the outline does not turn at this corner",
            "corners that lie neither on each other nor on a line with both neighbours are"
                + " allowed");
      }
    }
    Optional<Integer> crossing =
        IntStream.range(0, count)
            .boxed()
            .filter(at -> IntStream.range(0, at - 1).anyMatch(to -> meet(corners, to, at)))
            .findFirst();
    if (crossing.isPresent()) {
      return context.refuse(
          elements.get(crossing.get()),
          "the side from this corner on meets another side",
          "corners in order round the outline are allowed");
    }
    return Optional.of(corners);
  }

  private static boolean turns(List<FacetPoint> corners, int at) {
    int count = corners.size();
    FacetPoint before = corners.get((at + count - 1) % count);
    FacetPoint after = corners.get((at + 1) % count);
    return Math.abs(corners.get(at).leftOf(before, after)) > 1;
  }

  /** Whether two sides that are no neighbours meet. */
  private static boolean meet(List<FacetPoint> corners, int one, int other) {
    int count = corners.size();
    if ((other + 1) % count == one) {
      return false;
    }
    FacetPoint a = corners.get(one);
    FacetPoint b = corners.get(one + 1);
    FacetPoint c = corners.get(other);
    FacetPoint d = corners.get((other + 1) % count);
    return c.leftOf(a, b) * d.leftOf(a, b) <= 0
        && a.leftOf(c, d) * b.leftOf(c, d) <= 0
        && reach(a.across(), b.across(), c.across(), d.across())
        && reach(a.up(), b.up(), c.up(), d.up());
  }

  /** Whether two stretches of an axis share a place; sides along one line need not. */
  private static boolean reach(double a, double b, double c, double d) {
    return Math.max(Math.min(a, b), Math.min(c, d)) <= Math.min(Math.max(a, b), Math.max(c, d));
  }
}
