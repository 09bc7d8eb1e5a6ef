package plycrag.params;

import java.util.List;

/** Keys without which an entry of a list says nothing. */
final class Needed {
  /** What stands for the default of such a key. */
  static final Standard<Double> NONE = Standard.derived("none: it is needed");

  private Needed() {}

  /**
   * Reports keys that are left out.
   *
   * @param what the entry is, in a word
   */
  static void check(
      Values values, TableSpec table, String what, List<Parameter<?>> needed, Faults faults) {
    for (Parameter<?> parameter : needed) {
      if (!values.isGiven(parameter)) {
        faults.add(
            values.path(),
            firstSpot(values, table),
            "this " + what + " has no " + parameter.key(),
            "a " + what + " with one is allowed");
      }
    }
  }

  /** Where the first key of an entry stands. */
  static Spot firstSpot(Values values, TableSpec table) {
    return table.parameters().stream()
        .filter(values::isGiven)
        .findFirst()
        .map(values::spot)
        .orElse(Spot.START);
  }
}
