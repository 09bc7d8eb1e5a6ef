package plycrag.drawing.pen;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.document.Layer;
import plycrag.document.Pen;
import plycrag.layout.sheets.CountersinkDepth;
import plycrag.layout.sheets.MachinedHole;
import plycrag.units.Decimal;
import plycrag.wall.LayerNames;
import plycrag.wall.LayerNames.Field;
import plycrag.wall.LayerNames.Operation;
import plycrag.wall.LayerNames.Scheme;
import plycrag.wall.Wall;

/** The layers of what is cut and bored, named as a shop wants them. */
public final class OperationLayers {
  /** Named as they are where nothing else is told. */
  public static final OperationLayers USUAL = new OperationLayers(LayerNames.usual());

  private static final String LAYER_0 = "0";

  private final LayerNames names;

  /** Names by the user's patterns. */
  public OperationLayers(LayerNames names) {
    this.names = names;
  }

  /** Whether nothing but what is cut or bored may be drawn. */
  public boolean isPlain() {
    return names.scheme() == Scheme.PLAIN;
  }

  /** Round a piece. */
  public Layer outline() {
    return layer(Operation.OUTLINE, Pen.OUTLINE, Map.of());
  }

  /** Along the part of a piece's edge that does not lie on the sheet's own. */
  public Layer edge() {
    return layer(Operation.EDGE, Pen.OUTLINE, Map.of());
  }

  /** Within an opening. */
  public Layer opening() {
    return layer(Operation.OPENING, Pen.OUTLINE, Map.of());
  }

  /** Letters engraved so deep, mm. */
  public Layer engraved(double depth) {
    return layer(Operation.ENGRAVE, Pen.FINE, Map.of(Field.DEPTH, depth));
  }

  /** What makes a hole. */
  public Layer of(MachinedHole hole, Wall wall) {
    double diameter = hole.bore().diameter();
    double thickness = wall.sheet().thickness();
    double depth = hole.bore().depth();
    return switch (hole.kind()) {
      case COUNTERSINK ->
          bored(
              Operation.COUNTERSINK,
              Map.of(Field.DIAMETER, diameter, Field.ANGLE, CountersinkDepth.angle(wall)));
      case RECESS ->
          bored(Operation.RECESS, Map.of(Field.DEPTH, depth, Field.LEAVES, thickness - depth));
      case PIN ->
          bored(Operation.PIN, Map.of(Field.DIAMETER, diameter, Field.DEPTH, depth - thickness));
      case INSERT, SCREW -> bored(Operation.BORE, Map.of(Field.DIAMETER, diameter));
    };
  }

  private Layer bored(Operation operation, Map<Field, Double> numbers) {
    return layer(operation, Pen.PART, numbers);
  }

  /** One layer has one pen: on layer 0, and where operations share a name, all have the same. */
  private Layer layer(Operation operation, Pen pen, Map<Field, Double> numbers) {
    if (isPlain()) {
      return new Layer(LAYER_0, Pen.PART);
    }
    List<Operation> alike =
        Arrays.stream(Operation.values())
            .filter(other -> pattern(other).equals(pattern(operation)))
            .toList();
    String name = pattern(operation);
    for (Field field : operation.fields()) {
      String number =
          Optional.ofNullable(numbers.get(field)).map(one -> size(one, field)).orElse("");
      name = name.replace(field.text(), number);
    }
    return new Layer(
        name, alike.size() > 1 ? Pen.PART : pen, names.coloured() ? alike.get(0).colour() : 0);
  }

  private String pattern(Operation operation) {
    return names.patterns().get(operation);
  }

  /** With an underscore for the point, and of lengths a digit after it. */
  private static String size(double length, Field field) {
    String size = Decimal.of(length, field.decimals()).replace('.', '_');
    return size.contains("_") || field == Field.ANGLE ? size : size + "_0";
  }
}
