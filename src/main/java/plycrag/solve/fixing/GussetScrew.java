package plycrag.solve.fixing;

/**
 * A screw through a gusset.
 *
 * @param spot from the gusset's lower left corner
 * @param member the mark of the member that it goes into
 */
public record GussetScrew(FacePlace spot, String member) {}
