package plycrag.app;

import java.util.List;
import plycrag.TestFiles;
import plycrag.prices.PriceList;
import plycrag.read.ParameterFile;
import plycrag.read.Reading;

/** Designs from the text of a parameter file that names no other. */
public final class Designs {
  private Designs() {}

  /** Reads, lays out and judges. */
  public static Design of(String fileName, String toml) {
    return Design.of(
        ParameterFile.read(fileName, TestFiles.bytes(toml)),
        Reading.of(PriceList.empty()),
        Reading.of(List.of()),
        Reading.of(List.of()));
  }
}
