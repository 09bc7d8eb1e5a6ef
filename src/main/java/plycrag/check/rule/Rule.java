package plycrag.check.rule;

import java.util.List;
import plycrag.finding.Finding;
import plycrag.layout.Layout;

/** Judges one thing about a layout. */
public interface Rule {

  /** Its name in lists: lower case with hyphens, stable. */
  String name();

  /** What it sees to, in one sentence for a person. */
  String promise();

  /** Everything that it finds, in the order of reading. */
  List<Finding> findings(Layout layout);
}
