package plycrag.solve.frame;

/**
 * A bar or a support that takes one sign of force only.
 *
 * @param name what slack parts are called
 * @param sign that sign
 * @param element the number of its link, or -1 if it does not give
 * @param freedom the freedom that it holds rigidly, or -1
 */
record OneWay(String name, int sign, int element, int freedom) {
  boolean isRigid() {
    return element < 0;
  }
}
