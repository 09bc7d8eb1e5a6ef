package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tomlj.TomlArray;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;

/** A list of lengths. */
public final class LengthListKind implements Kind<List<Double>> {
  private final LengthKind each;
  private final int most;
  private final boolean ascends;

  /**
   * Lists of at most so many lengths.
   *
   * @param each what each of them may be
   * @param most how many there may be; at least one is needed
   * @param ascends whether each must be greater than the one before
   */
  public LengthListKind(LengthKind each, int most, boolean ascends) {
    this.each = each;
    this.most = most;
    this.ascends = ascends;
  }

  /** Lengths that ascend strictly. */
  public LengthListKind(LengthKind each, int most) {
    this(each, most, true);
  }

  /** Lengths in any order; the same may stand twice. */
  public static LengthListKind inAnyOrder(LengthKind each, int most) {
    return new LengthListKind(each, most, false);
  }

  @Override
  public Optional<List<Double>> read(Located value, Context context) {
    if (!(value.value() instanceof TomlArray)) {
      return refuseKind(value, context);
    }
    List<Located> elements = value.elements();
    if (elements.isEmpty() || elements.size() > most) {
      return context.refuse(
          value, "the list holds " + elements.size() + " lengths", mayStand(context));
    }
    List<Optional<Double>> lengths =
        elements.stream().map(element -> each.read(element, context)).toList();
    return lengths.stream().allMatch(Optional::isPresent)
        ? ordered(elements, lengths.stream().map(Optional::get).toList(), context)
        : Optional.empty();
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Several(each.shape(), 1, most);
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "a list of 1 to "
        + most
        + (ascends ? " lengths, each greater than the one before, from " : " lengths from ")
        + each.allowed(units);
  }

  private Optional<List<Double>> ordered(
      List<Located> elements, List<Double> lengths, Context context) {
    List<Integer> falls =
        IntStream.range(1, lengths.size())
            .filter(i -> ascends && lengths.get(i) <= lengths.get(i - 1))
            .boxed()
            .toList();
    for (int fall : falls) {
      context.refuse(
          elements.get(fall),
          "this length is not greater than the one before",
          "lengths that ascend are allowed");
    }
    return falls.isEmpty() ? Optional.of(lengths) : Optional.empty();
  }
}
