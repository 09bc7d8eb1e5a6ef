package plycrag.check;

import java.util.List;
import plycrag.finding.Finding;
import plycrag.layout.Layout;

/** A layout with an error finding: it must not be made. Only {@link Inspection} constructs one. */
public final class RefusedLayout implements CheckedLayout {
  private final Layout layout;
  private final List<Finding> findings;

  RefusedLayout(Layout layout, List<Finding> findings) {
    this.layout = layout;
    this.findings = List.copyOf(findings);
  }

  @Override
  public Layout layout() {
    return layout;
  }

  @Override
  public List<Finding> findings() {
    return findings;
  }

  @Override
  public boolean isApproved() {
    return false;
  }
}
