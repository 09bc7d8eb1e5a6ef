package plycrag.proof.replay;

import java.util.Set;

/**
 * What a controller understands. A program that asks for more is at fault.
 *
 * @param abilities beyond those of the plainest
 * @param milliseconds whether it waits by milliseconds rather than seconds
 * @param longestLine characters, the line's end not counted
 */
public record Abilities(Set<Ability> abilities, boolean milliseconds, int longestLine) {
  /** Copies the abilities. */
  public Abilities {
    abilities = Set.copyOf(abilities);
  }

  boolean can(Ability ability) {
    return abilities.contains(ability);
  }

  /** Whether a program can say anything to a person. */
  boolean hasComments() {
    return can(Ability.PARENTHESES) || can(Ability.SEMICOLON);
  }

  double seconds(double wait) {
    return milliseconds ? wait / 1000 : wait;
  }
}
