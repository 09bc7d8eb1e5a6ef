package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import plycrag.catalog.SoldTimber;
import plycrag.catalog.TimberCatalog;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;
import plycrag.units.Printable;
import plycrag.wall.buying.Section;

/** A section: two lengths, or the name of a timber in the catalog. */
public final class SectionKind implements Kind<Section> {
  private final LengthKind side;

  /**
   * Sections within bounds.
   *
   * @param side what each side may be
   */
  public SectionKind(LengthKind side) {
    this.side = side;
  }

  @Override
  public Optional<Section> read(Located value, Context context) {
    if (value.value() instanceof String name) {
      return named(name, value, context);
    }
    if (!(value.value() instanceof TomlArray array)) {
      return refuseKind(value, context);
    }
    return array.size() == 2
        ? pair(value, context)
        : context.refuse(value, "the list holds " + array.size() + " lengths", mayStand(context));
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Named(
        new ValueShape.Several(side.shape(), 2, 2), new ValueShape.Words(names()));
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "a pair of lengths, each from "
        + side.allowed(units)
        + ", or one of the names "
        + String.join(", ", names());
  }

  private Optional<Section> named(String name, Located value, Context context) {
    Optional<SoldTimber> timber = TimberCatalog.find(name);
    if (timber.isEmpty()) {
      return context.refuse(
          value, Printable.quoted(name) + " is not in the catalog of timber", mayStand(context));
    }
    return timber.map(found -> new Section(found.breadth(), found.depth()));
  }

  private Optional<Section> pair(Located value, Context context) {
    List<Optional<Double>> sides =
        value.elements().stream().map(element -> side.read(element, context)).toList();
    return sides.get(0).flatMap(breadth -> sides.get(1).map(depth -> new Section(breadth, depth)));
  }

  private static List<String> names() {
    return TimberCatalog.all().stream().map(SoldTimber::name).toList();
  }
}
