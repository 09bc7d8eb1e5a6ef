package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;

/** A list of numbers, in any order. */
public final class NumberListKind implements Kind<List<Double>> {
  private final NumberKind each;
  private final int most;

  /**
   * Lists of at most so many numbers.
   *
   * @param each what each of them may be
   * @param most how many there may be; at least one is needed
   */
  public NumberListKind(NumberKind each, int most) {
    this.each = each;
    this.most = most;
  }

  @Override
  public Optional<List<Double>> read(Located value, Context context) {
    if (!(value.value() instanceof TomlArray)) {
      return refuseKind(value, context);
    }
    List<Located> elements = value.elements();
    if (elements.isEmpty() || elements.size() > most) {
      return context.refuse(
          value, "the list holds " + elements.size() + " numbers", mayStand(context));
    }
    List<Optional<Double>> numbers =
        elements.stream().map(element -> each.read(element, context)).toList();
    return numbers.stream().allMatch(Optional::isPresent)
        ? Optional.of(numbers.stream().map(Optional::get).toList())
        : Optional.empty();
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Several(each.shape(), 1, most);
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "a list of 1 to " + most + " numbers from " + each.allowed(units);
  }
}
