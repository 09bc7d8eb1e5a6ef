package plycrag.finding;

/** How much a finding weighs. */
public enum Severity {
  /** The wall must not be made like this. */
  ERROR,
  /** The wall can be made; something was left out or wants a decision. */
  WARNING,
  /** Worth knowing. */
  NOTE;

  /** The word in lists. */
  public String word() {
    return switch (this) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case NOTE -> "note";
    };
  }
}
