/**
 * The self-check: every program is read back and held against the layout before a folder is
 * released.
 *
 * <p>Needs an approved wall's layout and the texts of all programs, by the names of their files.
 * Shares no code with {@code machining} and {@code files}, so that no mistake is made twice the
 * same way.
 *
 * <ol>
 *   <li>What is expected is told from the layout and its wall: holes with their bottoms, contours
 *       ({@link plycrag.proof.ExpectedContours}), marks, heights, tools; never from what made the
 *       programs.
 *   <li>What the controller understands is told in the words of the check ({@link
 *       plycrag.proof.ControllerAbilities}).
 *   <li>{@code proof.replay} reads, plays and compares; this room gathers the faults.
 * </ol>
 *
 * <p>Guarantees: {@link plycrag.proof.ProgramCheck} lets all programs of a wall pass or throws,
 * naming programs, lines and faults. Such a fault is a defect of ours and never the user's. Leaves
 * out: what {@code proof.replay} leaves out, and set-up sheets. Sees the layout, {@code document}
 * and {@code proof.replay}.
 */
package plycrag.proof;
