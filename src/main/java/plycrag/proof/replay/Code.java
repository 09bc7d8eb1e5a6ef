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
  G40(ModalGroup.COMPENSATION, Ability.CANCELLING),
  G43(ModalGroup.TOOL_LENGTH, Ability.LENGTH_OFFSETS),
  G49(ModalGroup.TOOL_LENGTH, Ability.CANCELLING),
  G54(ModalGroup.OFFSET),
  G55(ModalGroup.OFFSET, Ability.OFFSETS),
  G56(ModalGroup.OFFSET, Ability.OFFSETS),
  G57(ModalGroup.OFFSET, Ability.OFFSETS),
  G58(ModalGroup.OFFSET, Ability.OFFSETS),
  G59(ModalGroup.OFFSET, Ability.OFFSETS),
  G73(ModalGroup.MOTION, Ability.CYCLES),
  G80(ModalGroup.MOTION, Ability.CYCLES, Ability.CANCELLING),
  G81(ModalGroup.MOTION, Ability.CYCLES),
  G82(ModalGroup.MOTION, Ability.CYCLES),
  G83(ModalGroup.MOTION, Ability.CYCLES),
  G90(ModalGroup.DISTANCE),
  G91(ModalGroup.DISTANCE, Ability.INCREMENTS),
  G90_1(ModalGroup.ARC_CENTRE, Ability.CENTRES_FROM_ZERO),
  G91_1(ModalGroup.ARC_CENTRE, Ability.ARCS, Ability.CENTRES_FROM_START),
  G94(ModalGroup.FEED_MODE),
  G98(ModalGroup.CYCLE_RETURN, Ability.CYCLES),
  G99(ModalGroup.CYCLE_RETURN, Ability.CYCLES),
  M0(ModalGroup.STOP, Ability.PAUSE),
  M2(ModalGroup.STOP),
  M3(ModalGroup.SPINDLE),
  M5(ModalGroup.SPINDLE),
  M6(ModalGroup.TOOL, Ability.TOOL_CHANGE),
  M7(ModalGroup.BESIDE, Ability.MIST),
  M8(ModalGroup.BESIDE, Ability.FLOOD),
  M9(ModalGroup.BESIDE, Ability.MIST, Ability.FLOOD),
  M30(ModalGroup.STOP);

  private final ModalGroup group;
  private final Optional<Ability> ability;
  private final Optional<Ability> other;

  Code(ModalGroup group) {
    this.group = group;
    this.ability = Optional.empty();
    this.other = Optional.empty();
  }

  Code(ModalGroup group, Ability ability) {
    this.group = group;
    this.ability = Optional.of(ability);
    this.other = Optional.empty();
  }

  /** A word that either of two abilities takes in. */
  Code(ModalGroup group, Ability ability, Ability other) {
    this.group = group;
    this.ability = Optional.of(ability);
    this.other = Optional.of(other);
  }

  ModalGroup group() {
    return group;
  }

  boolean isIn(Abilities abilities) {
    return ability.isEmpty()
        || ability.filter(abilities::can).isPresent()
        || other.filter(abilities::can).isPresent();
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
