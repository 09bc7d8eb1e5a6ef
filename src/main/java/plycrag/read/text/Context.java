package plycrag.read.text;

import java.util.Optional;
import plycrag.units.LengthUnit;

/**
 * What a kind needs to judge a value.
 *
 * @param unit what bare numbers mean; empty where the file fails to say so
 * @param faults where findings go
 */
public record Context(Optional<LengthUnit> unit, Faults faults) {

  /** The unit in which messages show lengths. */
  public LengthUnit shownUnit() {
    return unit.orElse(LengthUnit.MM);
  }

  /** Reports what is wrong with a value. */
  public <T> Optional<T> refuse(Located at, String wrong, String allowed) {
    return refuse(at, wrong, allowed, "");
  }

  /** Reports what is wrong with a value, and what would mend it. */
  public <T> Optional<T> refuse(Located at, String wrong, String allowed, String suggestion) {
    faults.add(at.key(), at.place(), wrong, allowed, suggestion);
    return Optional.empty();
  }
}
