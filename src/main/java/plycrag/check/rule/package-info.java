/**
 * What a rule is, and the words that rules share.
 *
 * <p>A rule is a pure function from a layout to findings. It measures in (u, v), compares with a
 * distance that the parameters require, and says what would mend it. It never changes a layout.
 */
package plycrag.check.rule;
