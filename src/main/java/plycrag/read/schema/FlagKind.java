package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;

/** Yes or no. */
public final class FlagKind implements Kind<Boolean> {

  @Override
  public Optional<Boolean> read(Located value, Context context) {
    return value.value() instanceof Boolean flag ? Optional.of(flag) : refuseKind(value, context);
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Flag();
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "true or false";
  }
}
