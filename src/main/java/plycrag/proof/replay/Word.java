package plycrag.proof.replay;

/**
 * A letter with its number.
 *
 * @param letter A to Z
 * @param value as written, in the program's own units
 * @param text as written
 */
record Word(char letter, double value, String text) {}
