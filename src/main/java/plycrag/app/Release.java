package plycrag.app;

import java.nio.charset.StandardCharsets;
import java.util.List;
import plycrag.files.OutputFile;
import plycrag.files.lint.DxfLint;
import plycrag.files.lint.PdfLint;
import plycrag.files.lint.SvgLint;

/** The last look at files before they are written. */
final class Release {
  private Release() {}

  /**
   * The files, if readers will take every drawing and every print among them.
   *
   * @throws IllegalStateException if one would not: a defect of the program, and nothing may be
   *     written
   */
  static List<OutputFile> of(List<OutputFile> files) {
    for (OutputFile file : files) {
      List<String> faults = faults(file);
      if (!faults.isEmpty()) {
        throw new IllegalStateException(file.path() + ": " + faults.get(0));
      }
    }
    return files;
  }

  private static List<String> faults(OutputFile file) {
    if (file.path().endsWith(".dxf")) {
      return DxfLint.faults(text(file));
    }
    if (file.path().endsWith(".pdf")) {
      return PdfLint.faults(file.content());
    }
    return file.path().endsWith(".svg") ? SvgLint.faults(text(file)) : List.of();
  }

  private static String text(OutputFile file) {
    return new String(file.content(), StandardCharsets.UTF_8);
  }
}
