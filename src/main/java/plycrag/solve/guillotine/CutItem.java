package plycrag.solve.guillotine;

/**
 * An item on a sheet.
 *
 * @param x of its lower left corner from the sheet's, mm
 * @param y of its lower left corner from the sheet's, mm
 * @param turned by 90° from how the item is given
 */
public record CutItem(Item item, double x, double y, boolean turned) implements Part {}
