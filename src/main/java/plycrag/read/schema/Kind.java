package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;

/**
 * What sort of value a key takes, and which of them are allowed.
 *
 * @param <T> what is made of the value
 */
public sealed interface Kind<T>
    permits LengthKind,
        LengthListKind,
        CornerKind,
        CornersKind,
        SectionKind,
        StockSizeKind,
        NumberKind,
        NumberListKind,
        CountKind,
        WordKind,
        ThreadKind,
        TextKind,
        FlagKind {

  /** The value, or none after saying what is wrong with it. */
  Optional<T> read(Located value, Context context);

  /** What can be told of it without this class. */
  ValueShape shape();

  /** What is allowed, in words, with lengths in each of the units. */
  String allowed(List<LengthUnit> units);

  /** Reports a value of another sort. */
  default Optional<T> refuseKind(Located value, Context context) {
    return context.refuse(value, value.kindWords() + " stands here", mayStand(context));
  }

  /** What is allowed, as the end of a finding's sentence. */
  default String mayStand(Context context) {
    return allowed(List.of(context.shownUnit())) + " is allowed";
  }
}
