package plycrag.params;

import plycrag.units.LengthUnit;

/**
 * The wall as a whole.
 *
 * @param name printed everywhere
 * @param unit what bare numbers in the file mean and what a tape reads
 * @param raise height of the lowest facet's lower edge above the floor, vertical, mm
 */
public record WallParameters(String name, LengthUnit unit, double raise) {}
