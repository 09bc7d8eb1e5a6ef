package plycrag.check;

import java.util.List;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.Layout;

/** A layout with its verdict. */
public sealed interface CheckedLayout permits ApprovedLayout, RefusedLayout {

  /** What was judged. */
  Layout layout();

  /** Everything found, errors first, in the order of the rules. */
  List<Finding> findings();

  /** Whether it may be made. */
  boolean isApproved();

  /** The findings of a weight. */
  default List<Finding> findings(Severity severity) {
    return findings().stream().filter(finding -> finding.severity() == severity).toList();
  }
}
