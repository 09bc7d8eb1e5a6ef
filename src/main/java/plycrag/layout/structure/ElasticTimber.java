package plycrag.layout.structure;

/**
 * How stiff timber is.
 *
 * @param elasticity mean modulus along the grain, N/mm²
 * @param shearModulus mean, N/mm²
 * @param density mean, kg/m³, for how much fasteners give
 */
public record ElasticTimber(double elasticity, double shearModulus, double density) {}
