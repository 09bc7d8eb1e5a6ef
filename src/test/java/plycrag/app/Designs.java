package plycrag.app;

import plycrag.TestFiles;
import plycrag.params.ParameterFile;
import plycrag.params.PositionReading;
import plycrag.params.PriceList;
import plycrag.params.PriceReading;

/** Designs from the text of a parameter file that names no other. */
public final class Designs {
  private Designs() {}

  /** Reads, lays out and judges. */
  public static Design of(String fileName, String toml) {
    return Design.of(
        ParameterFile.read(fileName, TestFiles.bytes(toml)),
        new PriceReading(PriceList.empty()),
        PositionReading.none());
  }
}
