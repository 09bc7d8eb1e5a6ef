package plycrag.prices;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a price list may give a price for. */
public enum Article {
  /** A sheet of plywood. */
  SHEET("sheet", 3, "length x width x thickness"),
  /** A stick of timber; by the metre its size is the section alone. */
  TIMBER("timber", 3, "breadth x depth x length, by the metre breadth x depth"),
  /** A threaded insert. */
  INSERT("insert", 1, "diameter of the hole"),
  /** A screw for the flange of an insert. */
  FLANGE_SCREW("flange screw", 0, ""),
  /** A bolt that holds a hold to an insert. */
  HOLD_BOLT("hold bolt", 0, ""),
  /** A screw through a sheet into the frame. */
  SHEET_SCREW("sheet screw", 2, "diameter x length"),
  /** A screw through one member into another. */
  JOINT_SCREW("joint screw", 2, "diameter x length"),
  /** An angle bracket. */
  BRACKET("bracket", 3, "leg x width x thickness"),
  /** A flat strap. */
  STRAP("strap", 3, "length x width x thickness"),
  /** A screw for brackets and straps. */
  BRACKET_SCREW("bracket screw", 2, "diameter x length"),
  /** A bolt through timber. */
  BOLT("bolt", 1, "diameter"),
  /** A washer for such a bolt. */
  WASHER("washer", 1, "diameter of the bolt"),
  /** A nut for it. */
  NUT("nut", 1, "diameter of the bolt"),
  /** A hinge. */
  HINGE("hinge", 3, "breadth over both leaves x length of the pin x thickness"),
  /** What fixes a ledger or a plate to a building. */
  ANCHOR("anchor", 0, ""),
  /** A chain, a strap or a strut by the piece. */
  TETHER("tether", 0, ""),
  /** A strut that keeps a hinged facet from lifting. */
  LOCK("lock", 0, ""),
  /** Paint for the climbing face; a pack holds litres. */
  PAINT("paint", 0, ""),
  /** Sealer for the cut edges of sheets; a pack holds litres. */
  SEALANT("sealant", 0, ""),
  /** Sheets of sandpaper. */
  SANDPAPER("sandpaper", 0, "");

  private final String word;
  private final int sides;
  private final String sizeWords;

  Article(String word, int sides, String sizeWords) {
    this.word = word;
    this.sides = sides;
    this.sizeWords = sizeWords;
  }

  /** The word for it in a price list. */
  public String word() {
    return word;
  }

  /** How many lengths its size is made of when it is sold so. */
  public int sides(SaleUnit unit) {
    return unit == SaleUnit.METRE ? sides - 1 : sides;
  }

  /** What its size is, in words; empty if it has none. */
  public String sizeWords() {
    return sizeWords;
  }

  public static Optional<Article> find(String word) {
    return Arrays.stream(values()).filter(article -> article.word.equals(word)).findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Article::word).toList();
  }
}
