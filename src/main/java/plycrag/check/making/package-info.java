/**
 * Whether what the layout asks for can be bought, sawn, drilled and joined, one class a rule.
 *
 * <p>Needs a layout with its wall's machine, stock and catalogue. Rules ask what the makers will
 * ask, so that nothing is approved that they cannot make: which tool makes a hole is the answer of
 * {@code wall.machine.ToolBox}, where marks and pins find room that of {@code layout.sheets}, what
 * holds a joint that of {@code layout.joints}.
 *
 * <p>Guarantees: where many are alike, the first is told with their number ({@link
 * plycrag.check.making.AlikeCount}); where something of another size would do, the finding says
 * which. Nothing but {@link plycrag.check.making.FlangeRecess} asks what a recess changes for
 * clearances: it reaches no further beyond its flange than what keeps clear of flanges leaves.
 *
 * <p>Leaves out: prices, strength, and how programs run. Sees {@code check.rule} and the layout.
 */
package plycrag.check.making;
