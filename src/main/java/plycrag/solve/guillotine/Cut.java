package plycrag.solve.guillotine;

import java.util.Optional;

/**
 * A cut right across a part. The saw takes what lies from {@code at} to {@code at} + kerf, or to
 * the part's edge if that comes first.
 *
 * @param upright true for a cut along y, at a place along x
 * @param at where the near part ends, mm from the sheet's lower left corner
 * @param near the part left of an upright cut or below a level one
 * @param far the part beyond; empty where the kerf takes all that is left
 */
public record Cut(boolean upright, double at, Part near, Optional<Part> far) implements Part {}
