package plycrag.layout.skin;

/** Whether a member could be moved, and what keeps it where it is. */
public enum Fixity {
  /** Nothing: it stands between others to keep the spacing. */
  FREE,
  /** It lies flush with an edge of the facet. */
  EDGE,
  /** It backs a seam. */
  SEAM,
  /** It lies flush with an opening. */
  OPENING,
  /** It belongs to the support. */
  SUPPORT
}
