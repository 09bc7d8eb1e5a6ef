package plycrag.solve.timber;

/**
 * What a fastener's pull adds to a way of yielding in which it bends, EN 1995-1-1, 8.2.2 (2): a
 * quarter of F_ax,Rk, but at most a part of what that way bears without. N.
 */
public final class RopeEffect {
  private RopeEffect() {}

  /** With a part of at most 0.25 for bolts, 0 for dowels, 1 for screws. */
  public static Worked of(Worked johansen, double pull, double most) {
    return Worked.of("8.2.2 (2)", "F_v + min(F_ax/4; k F_v)")
        .with("F_v", johansen.value(), "N")
        .with("F_ax", pull, "N")
        .with("k", most)
        .is(johansen.value() + Math.min(pull / 4, most * johansen.value()), "N");
  }
}
