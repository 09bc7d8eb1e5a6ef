/**
 * One class a rule: what must keep clear of what on a facet. What inserts keep clear of is a list
 * in {@code layout}, of which {@link plycrag.check.clearance.InsertClear} makes a rule each.
 *
 * <p>Distances are measured between the things themselves, a flange's rim and a member's side, not
 * between their centres, and count below zero where they overlap. Neighbours are found in an
 * R-tree, so that cost grows about as the number of things.
 */
package plycrag.check.clearance;
