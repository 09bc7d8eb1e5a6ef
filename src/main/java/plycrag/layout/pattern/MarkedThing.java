package plycrag.layout.pattern;

/** Something on a facet that has a name. */
interface MarkedThing {

  /** Its mark; empty if it has none. */
  String mark();

  /** What a person calls it: {@code stud ST3}. */
  String words();
}
