package plycrag.params;

import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import plycrag.units.LengthUnit;

/**
 * A place on a facet: two lengths in a list, across and up.
 *
 * @param each what each of them may be
 */
record CornerKind(LengthKind each) implements Kind<Corner> {

  /** Anywhere on a facet. */
  static final CornerKind ON_FACET = new CornerKind(LengthKind.length(0, 50_000));

  @Override
  public Optional<Corner> read(Located value, Context context) {
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
    return across.flatMap(u -> up.map(v -> new Corner(u, v)));
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "a list of two lengths, across and up, from " + each.allowed(units);
  }
}
