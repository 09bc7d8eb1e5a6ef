package plycrag.read.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.units.Printable;

/** Collects the findings in one file. */
public final class Faults {
  private static final Comparator<Finding> BY_PLACE =
      Comparator.comparingInt((Finding finding) -> place(finding).line())
          .thenComparingInt(finding -> place(finding).column())
          .thenComparing(Finding::rule);

  private final String file;
  private final List<Finding> findings = new ArrayList<>();

  public Faults(String file) {
    this.file = file;
  }

  public void add(String key, SourcePlace place, String wrong, String allowed) {
    add(key, place, wrong, allowed, "");
  }

  /** What was probably meant stands before what is allowed, which may be a long list. */
  public void add(String key, SourcePlace place, String wrong, String allowed, String suggestion) {
    Place.InFile inFile = new Place.InFile(file, place.line(), place.column());
    String meant = suggestion.isEmpty() ? "" : suggestion + "; ";
    findings.add(Finding.inFile(shown(key), inFile, wrong + "; " + meant + allowed));
  }

  /** All of them, by line and column. */
  public List<Finding> sorted() {
    return findings.stream().sorted(BY_PLACE).toList();
  }

  /** TOML allows an empty key in quotes. */
  private static String shown(String key) {
    return key.isBlank() ? Printable.quoted(key) : Printable.masked(key);
  }

  private static Place.InFile place(Finding finding) {
    return (Place.InFile) finding.place();
  }
}
