package plycrag.app;

/** The exit codes. */
final class Exit {
  static final int WELL = 0;
  static final int ERROR_FINDINGS = 1;
  static final int WRONG_INPUT = 2;
  static final int FILES = 3;
  static final int DEFECT = 70;

  private Exit() {}
}
