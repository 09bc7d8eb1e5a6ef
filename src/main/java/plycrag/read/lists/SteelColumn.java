package plycrag.read.lists;

import plycrag.read.schema.CountKind;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Range;

/** The columns of a catalogue of brackets, straps and hinges. */
enum SteelColumn implements ListColumn {
  SHAPE("shape", true),
  ARTICLE("article", true),
  LEG("leg", true, 15, 400),
  WIDTH("width", true, 10, 300),
  THICKNESS("thickness", true, 0.5, 10),
  HOLES("holes", true),
  LINES("lines", false),
  FIRST("first", true, 3, 400),
  PITCH("pitch", false, 3, 100),
  GAUGE("gauge", false, 3, 200),
  SCREW("screw", true, 2, 12);

  /** Holes in a leg, and lines in which they lie. */
  static final CountKind COUNT = new CountKind(new Range(1, 40), "holes");

  private final String word;
  private final boolean isNeeded;
  private final double least;
  private final double most;

  SteelColumn(String word, boolean isNeeded) {
    this(word, isNeeded, 0, 0);
  }

  SteelColumn(String word, boolean isNeeded, double least, double most) {
    this.word = word;
    this.isNeeded = isNeeded;
    this.least = least;
    this.most = most;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public boolean isNeeded() {
    return isNeeded;
  }

  /** What lengths may stand in it. */
  LengthKind length() {
    return LengthKind.length(least, most);
  }
}
