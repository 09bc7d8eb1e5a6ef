package plycrag.check.structure;

import java.util.List;
import plycrag.layout.Layout;
import plycrag.layout.structure.LoadCases;
import plycrag.units.Significant;
import plycrag.wall.room.GivenStructure;

/** What the preliminary check takes for true, in words; each is a key of {@code [structure]}. */
public final class Assumptions {
  private Assumptions() {}

  /** One a line. */
  public static List<String> of(Layout layout) {
    GivenStructure given = layout.wall().structure();
    GivenStructure.Climbing climbing = given.climbing();
    return List.of(
        "one climber of "
            + Significant.of(climbing.weight())
            + " N who moves and counts "
            + Significant.of(climbing.factor())
            + " times, of which "
            + Significant.of(climbing.sideways())
            + " acts level as well, "
            + layout.wall().tape().text(climbing.reach())
            + " off the face; "
            + LoadCases.others(layout)
            + " more who hang still",
        "holds of " + Significant.of(given.holds()) + " kg on each square metre",
        "friction on the floor of "
            + Significant.of(given.friction())
            + " where nothing is anchored, for sliding alone",
        "1.35 times its weight and 1.5 times climbers (EN 1990, 6.10), or its weight once where"
            + " that is worse; 0.9 times its weight against toppling",
        "timber of "
            + given.timber().name()
            + ", short-term strength times 0.9, over 1.3 (EN 1995-1-1, Tables 2.3 and 3.1)",
        "joints pinned and joints stiff, the wall with its sheets and without: the worst counts",
        "no wind, no snow, no earthquake, a floor that does not give, a building that bears it");
  }
}
