package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;
import plycrag.wall.FacetPoint;

/** A place on a facet: two lengths in a list, across and up. */
public final class CornerKind implements Kind<FacetPoint> {

  /** Anywhere on a facet. */
  public static final CornerKind ON_FACET = new CornerKind(LengthKind.length(0, 50_000));

  private final LengthKind each;

  /**
   * Places within bounds.
   *
   * @param each what each of them may be
   */
  public CornerKind(LengthKind each) {
    this.each = each;
  }

  @Override
  public Optional<FacetPoint> read(Located value, Context context) {
    if (!(value.value() instanceof TomlArray)) {
      return refuseKind(value, context);
    }
    List<Located> elements = value.elements();
    if (elements.size() != 2) {
      return context.refuse(
          value, "the list holds " + elements.size() + " lengths", mayStand(context));
    }
    Optional<Double> across = each.read(elements.get(0), context);
    Optional<Double> up = each.read(elements.get(1), context);
    return across.flatMap(u -> up.map(v -> new FacetPoint(u, v)));
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Several(each.shape(), 2, 2);
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "a list of two lengths, across and up, from " + each.allowed(units);
  }
}
