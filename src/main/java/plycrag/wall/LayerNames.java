package plycrag.wall;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How the layers are named on which a shop finds what it is to cut and to bore.
 *
 * @param scheme whether operations have layers of their own
 * @param coloured whether every operation has a colour of its own
 * @param patterns the name of each operation's layer, with fields in braces
 */
public record LayerNames(Scheme scheme, boolean coloured, Map<Operation, String> patterns) {
  /** Copies the names; an operation that has none keeps its usual one. */
  public LayerNames {
    Map<Operation, String> all = new EnumMap<>(Operation.class);
    for (Operation operation : Operation.values()) {
      all.put(operation, patterns.getOrDefault(operation, operation.usual()));
    }
    patterns = Map.copyOf(all);
  }

  /** The usual names. */
  public static LayerNames usual() {
    return new LayerNames(Scheme.OPERATIONS, false, Map.of());
  }

  /** Whether operations have layers. */
  public enum Scheme {
    /** Each has its own, and what is not to be cut has others. */
    OPERATIONS,
    /** All that is cut or bored lies on layer 0, and there is nothing else. */
    PLAIN
  }

  /** A number that a layer's name may hold. */
  public enum Field {
    /** Of a hole, mm. */
    DIAMETER("{diameter}", 7, 4),
    /** Below the face, or of a pin's hole below the sheet, mm. */
    DEPTH("{depth}", 5, 2),
    /** What remains of the sheet below a recess, mm. */
    LEAVES("{leaves}", 5, 2),
    /** Between the sides of a cone, degrees. */
    ANGLE("{angle}", 5, 1);

    private final String text;
    private final int longest;
    private final int decimals;

    Field(String text, int longest, int decimals) {
      this.text = text;
      this.longest = longest;
      this.decimals = decimals;
    }

    /** As it stands in a pattern. */
    public String text() {
      return text;
    }

    /** How many characters its number takes at most. */
    public int longest() {
      return longest;
    }

    /** How many digits after the point. */
    public int decimals() {
      return decimals;
    }
  }

  /** What a shop does along a line or at a circle. */
  public enum Operation {
    /** Round a piece, outside of a closed line, through. */
    OUTLINE("outline", "OUTLINE_THROUGH", 1),
    /** Where a piece ends at the sheet's own edge: along an open line, to the right of it. */
    EDGE("edge", "EDGE_THROUGH", 6),
    /** Within an opening, inside of a closed line, through. */
    OPENING("opening", "OPENING_THROUGH_INSIDE", 2),
    /** A hole through the sheet. */
    BORE("bore", "BORE_{diameter}_THROUGH", 5),
    /** A hole for a pin, through the sheet and into the board below. */
    PIN("pin", "PIN_{diameter}_THROUGH_BOARD_{depth}", 4),
    /** A cone, as wide as told on the face. */
    COUNTERSINK("countersink", "CSK_{diameter}_ANGLE_{angle}", 3),
    /** A round recess with a flat floor. */
    RECESS("recess", "POCKET_DEPTH_{depth}_LEAVES_{leaves}", 30),
    /** A thin line. */
    ENGRAVE("engrave", "ENGRAVE_DEPTH_{depth}", 8);

    private final String word;
    private final String usual;
    private final int colour;

    Operation(String word, String usual, int colour) {
      this.word = word;
      this.usual = usual;
      this.colour = colour;
    }

    /** In keys. */
    public String word() {
      return word;
    }

    /** The pattern where none is told. */
    public String usual() {
      return usual;
    }

    /** Its colour where operations have colours: an index of the common palette. */
    public int colour() {
      return colour;
    }

    /** What its name may hold. */
    public List<Field> fields() {
      return Arrays.stream(Field.values()).filter(field -> usual.contains(field.text())).toList();
    }
  }
}
