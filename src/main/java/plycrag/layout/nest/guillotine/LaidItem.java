package plycrag.layout.nest.guillotine;

/**
 * An item on a sheet.
 *
 * @param x of its lower left corner from the sheet's, mm
 * @param y of its lower left corner from the sheet's, mm
 * @param turned by 90° from how the item is given
 */
public record LaidItem(Item item, double x, double y, boolean turned) implements Part {

  /** Along x as it lies, mm. */
  public double width() {
    return turned ? item.height() : item.width();
  }

  /** Along y as it lies, mm. */
  public double height() {
    return turned ? item.width() : item.height();
  }
}
