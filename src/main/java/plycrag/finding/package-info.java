/**
 * Findings: what is wrong, where, by how much, and what would mend it.
 *
 * <p>Findings are values. They are collected, never thrown, so that one run reports all of them.
 */
package plycrag.finding;
