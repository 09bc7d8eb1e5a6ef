/**
 * Whether a wall will hold: a preliminary check that shows its work.
 *
 * <p>Needs a layout and what its file tells of loads and timber ({@code [structure]}). The wall is
 * solved as a frame ({@code layout.structure}) at each of its angles, with joints pinned and stiff,
 * with its sheets and without; the worst of all counts.
 *
 * <p>Each check is a class that names its clause, its formula and its units, and reckons with
 * {@code solve.timber}. Results are values: a {@link plycrag.check.structure.StructureLine} for
 * each part and check, in {@code checks/structure.csv}.
 *
 * <p>Guarantees: what has no capacity is not checked and says what it needs; an unknown grade is
 * never taken for another; nothing is said where loads are not known, as of wind. Says never that a
 * wall is safe, holds or complies. Lines are told, and not yet held against the layout: none
 * refuses a wall. Not judged yet: brackets, straps and hinges, which need their maker's values;
 * screws that are pulled; screws through sheets, inserts, sheets between studs; splitting; what
 * anchors are let into; second order.
 *
 * <p>Joints count as pinned and as stiff, and the worse is told. What is stiff draws moments that
 * small gussets could not pass: their lines are then worse than the joint will be.
 */
package plycrag.check.structure;
