package plycrag.read;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plycrag.geometry.Tolerance;
import plycrag.read.schema.Values;
import plycrag.read.text.Faults;
import plycrag.units.Decimal;
import plycrag.wall.room.GivenSupport.Base;
import plycrag.wall.room.GivenSupport.Kind;

/** What the keys of a support require of each other. */
final class SupportChecks {
  private static final Set<Kind> ON_WALL = Set.of(Kind.FIXED, Kind.HINGED);
  private static final double LEAST_BEHIND = 100;

  private SupportChecks() {}

  /** Reports supports that lean on a building which is not told, and keys of no support. */
  static void check(Values usual, List<Values> facets, Faults faults) {
    Collection<Values> own = SupportTable.own(usual, facets).values();
    boolean isBasis =
        !usual.isGiven(SupportTable.KIND)
            && own.stream().anyMatch(one -> one.isGiven(SupportTable.KIND));
    if (!isBasis) {
      check(usual, faults);
    }
    own.forEach(one -> check(one, faults));
  }

  private static void check(Values values, Faults faults) {
    if (!values.isGiven(SupportTable.KIND)) {
      SupportTable.TABLE.parameters().stream()
          .filter(values::isGiven)
          .findFirst()
          .ifPresent(
              key ->
                  faults.add(
                      values.key(SupportTable.KIND),
                      values.place(key),
                      "this support has no kind",
                      SupportTable.KIND.kind().allowed(List.of(values.unit())) + " is allowed"));
      return;
    }
    checkBehind(values, faults);
    checkPosts(values, faults);
    boolean leans = values.given(SupportTable.KIND).filter(ON_WALL::contains).isPresent();
    if (leans && !values.isGiven(SupportTable.FIXED_TO)) {
      faults.add(
          values.key(SupportTable.FIXED_TO),
          values.place(SupportTable.KIND),
          "what the building's wall is made of is not told",
          SupportTable.FIXED_TO.kind().allowed(List.of(values.unit())) + " is allowed");
    }
  }

  private static void checkPosts(Values values, Faults faults) {
    boolean onPosts =
        values.given(SupportTable.FIXED_TO).filter(base -> base == Base.POSTS).isPresent();
    if (onPosts && values.given(SupportTable.KIND).filter(kind -> kind == Kind.FIXED).isPresent()) {
      faults.add(
          values.key(SupportTable.FIXED_TO),
          values.place(SupportTable.FIXED_TO),
          "a wall that is fixed has a building behind it",
          "posts are allowed where kind is hinged; a wall that stands on posts is freestanding");
    }
  }

  private static void checkBehind(Values values, Faults faults) {
    Optional<Double> behind = values.given(SupportTable.BEHIND).filter(told -> told < LEAST_BEHIND);
    boolean isFlat =
        behind.filter(told -> told == 0).isPresent()
            && values.given(SupportTable.KIND).filter(kind -> kind == Kind.FIXED).isPresent();
    boolean hangs = values.given(SupportTable.KIND).filter(kind -> kind == Kind.HUNG).isPresent();
    if (behind.isPresent() && !isFlat && !hangs) {
      faults.add(
          values.key(SupportTable.BEHIND),
          values.place(SupportTable.BEHIND),
          "there is no room for what is to stand behind the frame",
          "at least 100 mm is allowed, or 0 where kind is fixed and the frame lies on the wall");
    }
  }

  /**
   * Reports ledgers on a building's wall over which ties would stand out.
   *
   * @param frame the keys of the frame, as deep as which ties are where nothing else is told
   */
  static void checkLedgers(Values usual, List<Values> facets, Values frame, Faults faults) {
    checkLedger(usual, frame, faults);
    SupportTable.own(usual, facets).values().forEach(one -> checkLedger(one, frame, faults));
  }

  private static void checkLedger(Values values, Values frame, Faults faults) {
    boolean onWall = values.given(SupportTable.KIND).filter(ON_WALL::contains).isPresent();
    if (!onWall || !values.isSound(SupportTable.TIE) || !frame.isSound(FrameTable.SECTION)) {
      return;
    }
    double tie = values.given(SupportTable.TIE).orElse(frame.get(FrameTable.SECTION).depth());
    values
        .given(SupportTable.LEDGER)
        .filter(ledger -> Tolerance.isLess(ledger.depth(), tie))
        .ifPresent(
            ledger ->
                faults.add(
                    values.key(SupportTable.LEDGER),
                    values.place(SupportTable.LEDGER),
                    "ties are deeper than their ledger is high, "
                        + length(tie, values)
                        + " and "
                        + length(ledger.depth(), values),
                    "a second length of at least " + length(tie, values) + " is allowed"));
  }

  private static String length(double millimetres, Values values) {
    return Decimal.of(millimetres / values.unit().millimetres(), 4) + " " + values.unit().word();
  }
}
