package plycrag.finding;

/** A finding as one line for a terminal. */
public final class FindingLine {
  private FindingLine() {}

  /**
   * {@code file:line:col: key: what is wrong; what is allowed; what is nearest} for a finding in a
   * file, so that editors can jump to it; {@code severity: rule: sentence; suggestion} for others.
   */
  public static String of(Finding finding) {
    String rest = finding.rule() + ": " + finding.sentence();
    String suggestion = finding.suggestion().isEmpty() ? "" : "; " + finding.suggestion();
    return start(finding) + rest + suggestion;
  }

  private static String start(Finding finding) {
    if (finding.place() instanceof Place.InFile place) {
      return place.file() + ":" + place.line() + ":" + place.column() + ": ";
    }
    return finding.severity().word() + ": ";
  }
}
