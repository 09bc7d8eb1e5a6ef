package plycrag.read.lists;

/** A column of a list. */
interface ListColumn {
  /** What names it in the first row. */
  String word();

  /** Whether every list of its kind has it. */
  boolean isNeeded();
}
