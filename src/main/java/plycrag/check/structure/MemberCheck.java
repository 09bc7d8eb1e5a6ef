package plycrag.check.structure;

import java.util.List;
import plycrag.solve.timber.Worked;

/** A check of a member's section, made at every place of it under all loads. */
interface MemberCheck {
  /** All of them, in the order of the lists. */
  List<MemberCheck> ALL =
      List.of(
          new BendingCheck(),
          new ColumnCheck(),
          new SidewaysCheck(),
          new ShearCheck(),
          new TorsionCheck());

  /** In words. */
  String words();

  /** Its utilisation; the value of {@link #worked}, without the work. */
  double utilisation(Actions actions, MemberResistance resistance);

  /** The same with its formula and all numbers. */
  Worked worked(Actions actions, MemberResistance resistance);
}
