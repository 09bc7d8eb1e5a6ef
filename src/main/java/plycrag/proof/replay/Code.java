package plycrag.proof.replay;

import java.util.Arrays;
import java.util.Optional;

/** The G and M words that are known, each with what it takes to understand it. */
enum Code {
  G0(ModalGroup.MOTION),
  G1(ModalGroup.MOTION),
  G2(ModalGroup.MOTION, Ability.ARCS),
  G3(ModalGroup.MOTION, Ability.ARCS),
  G4(ModalGroup.WAIT),
  G17(ModalGroup.PLANE),
  G20(ModalGroup.UNITS, Ability.INCHES),
  G21(ModalGroup.UNITS),
  G43(ModalGroup.TOOL_LENGTH, Ability.LENGTH_OFFSETS),
  G54(ModalGroup.OFFSET),
  G73(ModalGroup.MOTION, Ability.CYCLES),
  G80(ModalGroup.MOTION, Ability.CYCLES),
  G81(ModalGroup.MOTION, Ability.CYCLES),
  G82(ModalGroup.MOTION, Ability.CYCLES),
  G83(ModalGroup.MOTION, Ability.CYCLES),
  G90(ModalGroup.DISTANCE),
  G91(ModalGroup.DISTANCE, Ability.INCREMENTS),
  G91_1(ModalGroup.ARC_CENTRE, Ability.ARCS),
  G94(ModalGroup.FEED_MODE),
  G98(ModalGroup.CYCLE_RETURN, Ability.CYCLES),
  G99(ModalGroup.CYCLE_RETURN, Ability.CYCLES),
  M0(ModalGroup.STOP, Ability.PAUSE),
  M2(ModalGroup.STOP),
  M3(ModalGroup.SPINDLE),
  M5(ModalGroup.SPINDLE),
  M6(ModalGroup.TOOL, Ability.TOOL_CHANGE),
  M30(ModalGroup.STOP);

  private final ModalGroup group;
  private final Optional<Ability> ability;

  Code(ModalGroup group) {
    this.group = group;
    this.ability = Optional.empty();
  }

  Code(ModalGroup group, Ability ability) {
    this.group = group;
    this.ability = Optional.of(ability);
  }

  ModalGroup group() {
    return group;
  }

  boolean isIn(Abilities abilities) {
    return ability.map(abilities::can).orElse(true);
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
