package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import plycrag.catalog.SheetCatalog;
import plycrag.catalog.StockSize;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;
import plycrag.units.Printable;

/** The name of a size in the catalog of sheets. */
public final class StockSizeKind implements Kind<StockSize> {

  @Override
  public Optional<StockSize> read(Located value, Context context) {
    if (!(value.value() instanceof String name)) {
      return refuseKind(value, context);
    }
    Optional<StockSize> size = SheetCatalog.find(name);
    if (size.isEmpty()) {
      return context.refuse(
          value,
          Printable.quoted(name) + " is not in the catalog of sheets",
          mayStand(context),
          NearestKey.suggestion(name, names(), "size"));
    }
    return size;
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Words(names());
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "one of the names " + String.join(", ", names());
  }

  private static List<String> names() {
    return SheetCatalog.all().stream().map(StockSize::name).toList();
  }
}
