package plycrag.layout;

/** Something on a facet that has a name. */
public interface Thing {

  /** Its mark; empty if it has none. */
  String mark();

  /** What a person calls it: {@code stud ST3}. */
  String words();
}
