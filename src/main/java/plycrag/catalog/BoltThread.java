package plycrag.catalog;

/**
 * Threads of inserts and of the bolts in them: metric coarse by ISO 261, unified coarse by ASME
 * B1.1.
 */
public enum BoltThread {
  /** 8 mm, pitch 1.25 mm. */
  M8("M8"),
  /** 10 mm, pitch 1.5 mm. */
  M10("M10"),
  /** 12 mm, pitch 1.75 mm. */
  M12("M12"),
  /** 5/16 in, 18 threads an inch. */
  UNC_5_16("5/16-18 UNC"),
  /** 3/8 in, 16 threads an inch. */
  UNC_3_8("3/8-16 UNC");

  private final String word;

  BoltThread(String word) {
    this.word = word;
  }

  /** As the standards write it. */
  public String word() {
    return word;
  }
}
