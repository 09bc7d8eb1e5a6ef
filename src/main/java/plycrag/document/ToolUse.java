package plycrag.document;

/**
 * What a program does with one tool, for the person who loads it.
 *
 * @param number of the tool, from 1
 * @param tool in words
 * @param speed rpm
 * @param holes how many it makes
 */
public record ToolUse(int number, String tool, double speed, int holes) {}
