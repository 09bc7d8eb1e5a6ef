package plycrag.finding;

/** A finding as one line for a terminal. */
public final class FindingLine {
  private FindingLine() {}

  /**
   * {@code file:line:col: key: what is wrong; what is nearest; what is allowed} for a finding in a
   * file, so that editors can jump to it; {@code severity: rule: sentence; suggestion} for others.
   */
  public static String of(Finding finding) {
    return of(finding, finding.sentence());
  }

  /** Equal findings on the wall of a file, which stands first: {@code file: severity: …}. */
  public static String of(String file, FindingGroup group) {
    return file + ": " + of(group.first(), group.sentence());
  }

  private static String of(Finding finding, String sentence) {
    String suggestion = finding.suggestion().isEmpty() ? "" : "; " + finding.suggestion();
    return start(finding) + finding.rule() + ": " + sentence + suggestion;
  }

  private static String start(Finding finding) {
    if (finding.place() instanceof Place.InFile place) {
      return place.file() + ":" + place.line() + ":" + place.column() + ": ";
    }
    return finding.severity().word() + ": ";
  }
}
