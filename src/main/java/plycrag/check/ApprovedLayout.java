package plycrag.check;

import java.util.List;
import plycrag.finding.Finding;
import plycrag.layout.Layout;

/** A layout without an error finding: it may be made. */
public final class ApprovedLayout extends CheckedLayout {
  ApprovedLayout(Layout layout, List<Finding> findings) {
    super(layout, findings);
  }
}
