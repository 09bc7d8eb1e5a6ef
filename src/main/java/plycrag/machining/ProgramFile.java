package plycrag.machining;

import plycrag.document.DrillProgram;

/**
 * A program as it was written.
 *
 * @param program its moves
 * @param name of its file
 * @param sha256 of its bytes, 64 hexadecimal digits
 */
public record ProgramFile(DrillProgram program, String name, String sha256) {}
