package plycrag.wall;

/**
 * Where an insert is asked for.
 *
 * @param facet the facet's name
 * @param u from the facet's left edge, mm
 * @param v from its lower edge, up the slope, mm
 */
public record InsertPosition(String facet, double u, double v) {}
