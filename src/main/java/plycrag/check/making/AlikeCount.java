package plycrag.check.making;

/** Says of how many alike the first is told. */
final class AlikeCount {
  private AlikeCount() {}

  /** {@code " and at 5 more joints"}; empty if it is the only one. */
  static String of(int count, String what) {
    return switch (count) {
      case 1 -> "";
      case 2 -> " and at 1 more " + what;
      default -> " and at " + (count - 1) + " more " + what + "s";
    };
  }
}
