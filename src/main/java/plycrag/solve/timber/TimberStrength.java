package plycrag.solve.timber;

/**
 * Characteristic values of a strength class, N/mm², as EN 338 or EN 14080 tell them.
 *
 * @param kind sawn or glued
 * @param bending f_m,k
 * @param tension f_t,0,k
 * @param compression f_c,0,k
 * @param across f_c,90,k
 * @param shear f_v,k
 * @param fifthElasticity E_0,05
 */
public record TimberStrength(
    TimberKind kind,
    double bending,
    double tension,
    double compression,
    double across,
    double shear,
    double fifthElasticity) {}
