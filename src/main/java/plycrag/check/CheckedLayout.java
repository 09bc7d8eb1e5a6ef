package plycrag.check;

import java.util.List;
import plycrag.check.structure.Precheck;
import plycrag.check.structure.StructureReport;
import plycrag.finding.Finding;
import plycrag.finding.FindingGroup;
import plycrag.finding.Severity;
import plycrag.layout.Layout;

/** A layout with its verdict. Only {@link Inspection} constructs one. */
public abstract sealed class CheckedLayout permits ApprovedLayout, RefusedLayout {
  private final Layout layout;
  private final List<Finding> findings;
  private final List<FindingGroup> groups;
  private StructureReport structure;

  CheckedLayout(Layout layout, List<Finding> findings) {
    this.layout = layout;
    this.findings = List.copyOf(findings);
    this.groups = FindingGroup.of(findings);
  }

  /** What was judged. */
  public final Layout layout() {
    return layout;
  }

  /** Everything found, errors first, in the order of the rules. */
  public final List<Finding> findings() {
    return findings;
  }

  /** The same, equal ones together: the place of a group, from 1, is the number people read. */
  public final List<FindingGroup> groups() {
    return groups;
  }

  /** The findings of a weight. */
  public final List<Finding> findings(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).toList();
  }

  /**
   * What the preliminary check of its strength finds; reckoned when it is first asked for, since no
   * verdict depends on it.
   */
  public final synchronized StructureReport structure() {
    if (structure == null) {
      structure =
          isApproved()
              ? Precheck.of(layout)
              : StructureReport.without("the wall is refused as it is, and would be another");
    }
    return structure;
  }

  /** Whether that reckons anything, without reckoning it. */
  public final boolean isReckoned() {
    return isApproved() && Precheck.isMade(layout);
  }

  /** Whether it may be made. */
  public final boolean isApproved() {
    return this instanceof ApprovedLayout;
  }
}
