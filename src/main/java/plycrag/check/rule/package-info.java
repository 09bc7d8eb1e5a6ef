/**
 * What a rule is, and the words that rules share.
 *
 * <p>A rule is a pure function from a layout to findings. It measures in (u, v) or in the room,
 * compares with a distance that the parameters require, and says what would mend it.
 *
 * <p>Guarantees: it has a stable name and a promise in one sentence for the book; it never changes
 * a layout; findings are made by a {@link plycrag.check.rule.Report}, which knows the tape that
 * lengths are told in. Leaves out: which rules there are. Sees the whole layout.
 */
package plycrag.check.rule;
