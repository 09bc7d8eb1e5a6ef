package plycrag.proof;

/**
 * A program as it will be written.
 *
 * @param path of its file, from the output folder
 * @param text all of it
 */
public record WrittenProgram(String path, String text) {}
