package plycrag.solve.frame;

/**
 * When a frame buckles.
 *
 * @param factor how many times all axial forces could grow until then
 * @param mode the shape in which it does
 */
public record CriticalLoad(double factor, Motion mode) {}
