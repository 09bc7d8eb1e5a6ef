package plycrag.check;

import java.util.List;
import plycrag.finding.Finding;
import plycrag.layout.Layout;

/** A layout with an error finding: it must not be made. */
final class RefusedLayout extends CheckedLayout {
  RefusedLayout(Layout layout, List<Finding> findings) {
    super(layout, findings);
  }
}
