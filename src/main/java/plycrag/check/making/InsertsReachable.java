package plycrag.check.making;

import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.params.InsertParameters.Fixing;
import plycrag.params.WallParameters.Behind;

/** An insert that spins or falls out can be put right once the wall stands. */
public final class InsertsReachable implements Rule {

  @Override
  public String name() {
    return "inserts-reachable";
  }

  @Override
  public String promise() {
    return "Inserts can be put right from behind, or hold without it.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    boolean closed = layout.wall().behind() == Behind.NONE;
    boolean hammered = layout.wall().inserts().kind() == Fixing.HAMMER_IN;
    return closed && hammered && !layout.inserts().isEmpty() ? List.of(finding()) : List.of();
  }

  private Finding finding() {
    return new Finding(
        name(),
        Severity.WARNING,
        new Place.WholeWall(),
        "",
        "",
        Optional.empty(),
        "nothing reaches the back of the finished wall, and an insert that was hammered in and"
            + " spins cannot be held there",
        "choose inserts that are screwed on ([inserts] kind), or fix a sheet so that it comes off");
  }
}
