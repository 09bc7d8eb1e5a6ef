package plycrag.layout;

import plycrag.geometry.Place;

/**
 * A strut, strap, chain or rope that holds a hinged facet at its angle.
 *
 * @param mark {@code T1}, … ; the one that works by itself beside it is {@code T1b}
 * @param backup whether it is the one that works by itself should the other fail
 * @param u where it is held on the facet, mm
 * @param v likewise, up the slope
 * @param anchor where it is held on the building, in the room
 */
public record Tether(String mark, boolean backup, double u, double v, Place anchor) {}
