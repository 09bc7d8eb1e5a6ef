package plycrag.proof.replay;

import java.util.EnumSet;

/** Controllers at both ends of what the reader knows, with lines of 72 characters at most. */
final class Dialects {
  /** Straight moves in millimetres, comments in parentheses, waits in seconds. */
  static final Abilities PLAINEST = new Abilities(EnumSet.of(Ability.PARENTHESES), false, 72);

  /** Everything that the reader knows, waits in seconds. */
  static final Abilities RICHEST = new Abilities(EnumSet.allOf(Ability.class), false, 72);

  private Dialects() {}
}
