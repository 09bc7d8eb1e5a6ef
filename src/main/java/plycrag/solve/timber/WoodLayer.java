package plycrag.solve.timber;

/**
 * A layer of wood that a fastener is in.
 *
 * @param thickness t, or how deep the fastener is in it, mm
 * @param embedment f_h,k, N/mm²
 */
public record WoodLayer(double thickness, double embedment) {}
