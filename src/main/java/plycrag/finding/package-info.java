/**
 * Findings: what is wrong, where, by how much, and what would mend it.
 *
 * <p>Needs nothing. A {@link plycrag.finding.Finding} has the name of its rule or key, a {@link
 * plycrag.finding.Severity}, a {@link plycrag.finding.Place} in a file or on the wall, the marks of
 * the thing judged and of what stands in its way, a {@link plycrag.finding.Measure}, a sentence and
 * a suggestion.
 *
 * <p>Guarantees: findings are values; they are collected, never thrown, so that one run reports all
 * of them; one line each on a terminal ({@link plycrag.finding.FindingLine}), where those that are
 * equal but for what they name stand together ({@link plycrag.finding.FindingGroup}). Leaves out:
 * who judges and what follows from it. Sees {@code units}.
 */
package plycrag.finding;
