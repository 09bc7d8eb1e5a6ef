package plycrag.solve.timber;

/**
 * A round fastener as shear asks for it.
 *
 * @param diameter d, of screws the effective one, mm
 * @param yieldMoment M_y,Rk, N mm
 */
public record Dowel(double diameter, double yieldMoment) {}
