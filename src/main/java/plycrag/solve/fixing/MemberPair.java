package plycrag.solve.fixing;

/**
 * Two members that are to be held together.
 *
 * @param first the one that ends there
 * @param second the one that it ends on, or that goes on from there
 */
public record MemberPair(TimberBody first, TimberBody second) {}
