package plycrag.wall;

/**
 * An opening in a facet.
 *
 * @param facet the facet's name
 * @param name printed beside it
 * @param shape where it lies
 * @param filled whether something fills it
 */
public record GivenCutout(String facet, String name, FacetShape shape, boolean filled) {}
