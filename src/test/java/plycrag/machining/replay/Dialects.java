package plycrag.machining.replay;

import java.util.EnumSet;

/** Controllers at both ends of what the reader knows, with lines of 72 characters at most. */
final class Dialects {
  /** Straight moves in millimetres, comments in parentheses, waits in seconds. */
  static final Dialect PLAINEST = new Dialect(EnumSet.of(Ability.PARENTHESES), false, 72);

  /** Everything that the reader knows, waits in seconds. */
  static final Dialect RICHEST = new Dialect(EnumSet.allOf(Ability.class), false, 72);

  private Dialects() {}
}
