package plycrag.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.FlagKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.ValueShape;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.LayerNames;
import plycrag.wall.LayerNames.Field;
import plycrag.wall.LayerNames.Operation;
import plycrag.wall.LayerNames.Scheme;

/** The keys of {@code [output]} that say how layers are named on which a shop cuts and bores. */
final class LayerKeys {
  /** What the oldest readers take. */
  private static final int LONGEST = 31;

  private static final Pattern LITERAL = Pattern.compile("[A-Z0-9_]*");

  static final Parameter<Scheme> DXF_LAYERS =
      new Parameter<>(
          "dxf-layers",
          new WordKind<>(List.of(Scheme.values())),
          DefaultValue.word(Scheme.OPERATIONS),
          "Layers of the sheets' DXF files: one for each operation, or plain: all that is cut or"
              + " bored on layer 0, and nothing else in the file.");

  static final Parameter<Boolean> DXF_COLOURS =
      new Parameter<>(
          "dxf-colours",
          new FlagKind(),
          DefaultValue.flag(false),
          "Whether every operation's layer has a colour of its own, for programs that go by it.");

  private static final Map<Operation, Parameter<String>> NAMES = names();

  private LayerKeys() {}

  static List<Parameter<?>> all() {
    List<Parameter<?>> all = new ArrayList<>(List.of(DXF_LAYERS, DXF_COLOURS));
    all.addAll(NAMES.values());
    return List.copyOf(all);
  }

  static LayerNames record(Values values) {
    Map<Operation, String> patterns = new EnumMap<>(Operation.class);
    NAMES.forEach((operation, key) -> patterns.put(operation, values.get(key)));
    return new LayerNames(values.get(DXF_LAYERS), values.get(DXF_COLOURS), patterns);
  }

  private static Map<Operation, Parameter<String>> names() {
    Map<Operation, Parameter<String>> names = new EnumMap<>(Operation.class);
    for (Operation operation : Operation.values()) {
      names.put(operation, name(operation));
    }
    return names;
  }

  private static Parameter<String> name(Operation operation) {
    return new Parameter<>(
        "layer-" + operation.word(),
        new TextKind(
            text -> isName(text, operation),
            shape(operation),
            "a layer's name",
            allowed(operation)),
        DefaultValue.text(operation.usual()),
        "The layer of " + what(operation) + ".");
  }

  private static String what(Operation operation) {
    return switch (operation) {
      case OUTLINE -> "pieces' outlines, closed lines whose outside is waste";
      case EDGE -> "outlines that end at the sheet's own edge, open lines whose right is waste";
      case OPENING -> "openings, closed lines whose inside is waste";
      case BORE -> "holes through the sheet";
      case PIN -> "holes for pins, which go so deep into the board below";
      case COUNTERSINK -> "cones for the heads of screws, by their diameter on the face";
      case RECESS -> "recesses for flanges";
      case ENGRAVE -> "engraved letters";
    };
  }

  private static String allowed(Operation operation) {
    String fields =
        operation.fields().stream().map(Field::text).collect(Collectors.joining(" and "));
    return "a name of at most "
        + LONGEST
        + " of A to Z, 0 to 9 and _"
        + (fields.isEmpty() ? "" : ", with " + fields + " for its numbers")
        + ", that does not begin with NOT_FOR_CUTTING";
  }

  /** How long it is with its numbers is left to {@link #isName}. */
  private static ValueShape shape(Operation operation) {
    String fields =
        operation.fields().stream()
            .map(field -> "|" + field.text().replace("{", "\\{").replace("}", "\\}"))
            .collect(Collectors.joining());
    int spelled = operation.fields().stream().mapToInt(field -> field.text().length()).sum();
    return new ValueShape.Line(
        "(?!NOT_FOR_CUTTING)(?:[A-Z0-9_]" + fields + ")+", LONGEST + spelled);
  }

  /** Numbers are taken to be as long as they come. */
  private static boolean isName(String text, Operation operation) {
    String literal = text;
    int length = text.length();
    for (Field field : operation.fields()) {
      if (literal.contains(field.text())) {
        literal = literal.replaceFirst(Pattern.quote(field.text()), "");
        length += field.longest() - field.text().length();
      }
    }
    return length > 0
        && length <= LONGEST
        && !text.startsWith("NOT_FOR_CUTTING")
        && LITERAL.matcher(literal).matches();
  }
}
