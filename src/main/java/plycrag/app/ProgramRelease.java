package plycrag.app;

import java.nio.charset.StandardCharsets;
import java.util.List;
import plycrag.files.OutputFile;
import plycrag.layout.Layout;
import plycrag.proof.ProgramCheck;
import plycrag.proof.WrittenProgram;

/** Hands the programs among files to their self-check, which knows no files. */
final class ProgramRelease {
  private ProgramRelease() {}

  /**
   * Lets programs pass.
   *
   * @param files a folder's; the programs are among them
   * @throws IllegalStateException if they do not make what the layout asks for
   */
  static void require(Layout layout, List<OutputFile> files) {
    ProgramCheck.require(
        layout,
        files.stream()
            .filter(file -> file.path().endsWith(".ngc"))
            .map(file -> new WrittenProgram(file.path(), text(file)))
            .toList());
  }

  private static String text(OutputFile file) {
    return new String(file.content(), StandardCharsets.UTF_8);
  }
}
