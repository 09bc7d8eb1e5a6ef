package plycrag.check.structure;

/** What became of a check. */
public sealed interface LineStatus {
  /** In words, as lists have it. */
  String words();

  /** The demand is not above the capacity. */
  record Passes() implements LineStatus {
    @Override
    public String words() {
      return "ok";
    }
  }

  /** It is above. */
  record Fails() implements LineStatus {
    @Override
    public String words() {
      return "fails";
    }
  }

  /**
   * It is not above if something holds that nobody has confirmed.
   *
   * @param condition in words, to follow "if"
   */
  record WouldPass(String condition) implements LineStatus {
    @Override
    public String words() {
      return "would pass if " + condition;
    }
  }

  /**
   * There is nothing to hold it against.
   *
   * @param needs in words, to follow "needs"
   */
  record NotChecked(String needs) implements LineStatus {
    @Override
    public String words() {
      return "not checked: needs " + needs;
    }
  }

  /** Of a utilisation. */
  static LineStatus of(double utilisation) {
    return utilisation <= 1 ? new Passes() : new Fails();
  }
}
