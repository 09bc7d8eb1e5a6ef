package plycrag.machining.replay;

import java.util.Arrays;
import java.util.Optional;

/** The G and M words that are known, each with what it takes to understand it. */
enum Code {
  G0(Group.MOTION),
  G1(Group.MOTION),
  G2(Group.MOTION, Ability.ARCS),
  G3(Group.MOTION, Ability.ARCS),
  G4(Group.WAIT),
  G17(Group.PLANE),
  G20(Group.UNITS, Ability.INCHES),
  G21(Group.UNITS),
  G54(Group.OFFSET),
  G73(Group.MOTION, Ability.CYCLES),
  G80(Group.MOTION, Ability.CYCLES),
  G81(Group.MOTION, Ability.CYCLES),
  G82(Group.MOTION, Ability.CYCLES),
  G83(Group.MOTION, Ability.CYCLES),
  G90(Group.DISTANCE),
  G91(Group.DISTANCE, Ability.INCREMENTS),
  G91_1(Group.ARC_CENTRE, Ability.ARCS),
  G94(Group.FEED_MODE),
  G98(Group.CYCLE_RETURN, Ability.CYCLES),
  G99(Group.CYCLE_RETURN, Ability.CYCLES),
  M0(Group.STOP, Ability.PAUSE),
  M2(Group.STOP),
  M3(Group.SPINDLE),
  M5(Group.SPINDLE),
  M6(Group.TOOL, Ability.TOOL_CHANGE),
  M30(Group.STOP);

  private final Group group;
  private final Optional<Ability> ability;

  Code(Group group) {
    this.group = group;
    this.ability = Optional.empty();
  }

  Code(Group group, Ability ability) {
    this.group = group;
    this.ability = Optional.of(ability);
  }

  Group group() {
    return group;
  }

  boolean isIn(Dialect dialect) {
    return ability.map(dialect::can).orElse(true);
  }

  boolean isArc() {
    return this == G2 || this == G3;
  }

  boolean isCycle() {
    return this == G73 || this == G81 || this == G82 || this == G83;
  }

  /** The code that a word spells, leading zeros or not, but no sign. */
  static Optional<Code> of(Word word) {
    boolean plain = word.text().matches("[GM][0-9.]+");
    return Arrays.stream(values()).filter(code -> plain && code.isSpelledBy(word)).findFirst();
  }

  private boolean isSpelledBy(Word word) {
    double number = Double.parseDouble(name().substring(1).replace('_', '.'));
    return name().charAt(0) == word.letter() && number == word.value();
  }
}
