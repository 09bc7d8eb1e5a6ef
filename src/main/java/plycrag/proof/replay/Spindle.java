package plycrag.proof.replay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** The spindle with the tool in it. */
final class Spindle {
  /** A longer wait was meant in other units, seconds. */
  private static final double LONGEST_WAIT = 60;

  private final List<Cutter> cutters;
  private int at;
  private boolean awaited = true;
  private boolean turning;
  private double waited;

  Spindle(List<Cutter> cutters) {
    this.cutters = cutters;
  }

  Cutter cutter() {
    return cutters.get(at);
  }

  boolean isTurning() {
    return turning;
  }

  boolean isAtSpeed(double dwell) {
    return turning && waited >= dwell - Accuracy.WAIT;
  }

  /** Each of these says what is wrong with it, if anything is. */
  Optional<String> start(double speed) {
    boolean before = turning;
    turning = true;
    awaited = false;
    waited = 0;
    if (before) {
      return Optional.of("the spindle turns already");
    }
    return fault(cutter().turnsAt(speed), "not the speed of tool " + cutter().number());
  }

  Optional<String> stop() {
    boolean before = turning;
    turning = false;
    return fault(before, "the spindle stands already");
  }

  Optional<String> pause(double seconds) {
    waited += seconds;
    return fault(seconds <= LONGEST_WAIT, "a wait of more than a minute");
  }

  Optional<String> change(int number) {
    OptionalInt found =
        IntStream.range(0, cutters.size())
            .filter(place -> cutters.get(place).number() == number)
            .findFirst();
    found.ifPresent(place -> at = place);
    awaited = false;
    return standing().or(() -> fault(found.isPresent(), "no tool " + number + " is foreseen"));
  }

  Optional<String> changeByHand() {
    boolean another = awaited || at + 1 < cutters.size();
    at += another && !awaited ? 1 : 0;
    awaited = false;
    return standing().or(() -> fault(another, "a pause for no other tool"));
  }

  Optional<String> measure(int number) {
    return fault(number == cutter().number(), "not the length of tool " + cutter().number());
  }

  private Optional<String> standing() {
    return fault(!turning, "the tool is changed while the spindle turns");
  }

  private static Optional<String> fault(boolean holds, String otherwise) {
    return holds ? Optional.empty() : Optional.of(otherwise);
  }
}
