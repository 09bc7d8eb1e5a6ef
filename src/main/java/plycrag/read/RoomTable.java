package plycrag.read;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.FlagKind;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.room.Room;
import plycrag.wall.room.Room.BringIn;
import plycrag.wall.room.Room.Floor;
import plycrag.wall.room.Room.Handling;
import plycrag.wall.room.Room.Mat;
import plycrag.wall.room.Room.Obstacle;
import plycrag.wall.room.Room.Sides;
import plycrag.wall.room.Room.Way;
import plycrag.wall.room.Room.Ways;

/** The keys of {@code [room]}, {@code [[obstacle]]}, {@code [mat]} and {@code [handling]}. */
final class RoomTable {
  private static final String UNTOLD = "none: it is not judged";

  static final Parameter<Double> LEFT =
      untold("left", 0, 50_000, "From the wall's left edge to whatever ends the room there.");
  static final Parameter<Double> RIGHT =
      untold("right", 0, 50_000, "From the wall's right edge to whatever ends the room there.");
  static final Parameter<Double> FRONT =
      untold(
          "front",
          0,
          50_000,
          "From the foot of the wall's face toward the climber to whatever ends the room there.");
  static final Parameter<Boolean> NO_DRILL =
      new Parameter<>(
          "no-drill",
          new FlagKind(),
          DefaultValue.flag(false),
          "Whether nothing may be fixed to the building, as in a rented place.");
  static final Parameter<Double> FLOOR_FALL =
      new Parameter<>(
          "floor-fall",
          LengthKind.length(-200, 200),
          DefaultValue.length("0 mm", "0 in"),
          "How much lower the floor is at the wall's right end than at its left.");
  static final Parameter<Double> FLOOR_PITCH =
      new Parameter<>(
          "floor-pitch",
          new NumberKind(new Range(-10, 10), "degrees"),
          DefaultValue.number(0),
          "How steeply the floor rises toward the climber; below zero it falls. The wall is set"
              + " level on the highest place under it, from which raise and ceiling are measured,"
              + " and packed elsewhere.");
  static final Parameter<Double> DOOR_WIDTH =
      untold("door-width", 300, 10_000, "Clear width of the narrowest door on the way in.");
  static final Parameter<Double> DOOR_HEIGHT =
      untold("door-height", 1000, 10_000, "Clear height of the lowest door on the way in.");
  static final Parameter<Double> STAIR_WIDTH =
      untold("stair-width", 300, 10_000, "Clear width of the narrowest stair on the way in.");
  static final Parameter<Double> STAIR_HEIGHT =
      untold("stair-height", 1000, 10_000, "Clear height above the steps of that stair.");

  static final Parameter<Double> DOOR_PASSAGE =
      turn(
          "door-passage",
          "Clear width of the passage before that door, where things have to be turned into it.");
  static final Parameter<Double> STAIR_LANDING =
      turn("stair-landing", "Clear depth of the narrowest landing where that stair turns.");

  static final TableSpec TABLE =
      new TableSpec(
          "room",
          false,
          "What is around the wall. What is not told is not judged.",
          keys(),
          List.of());

  static final Parameter<String> NAME =
      new Parameter<>(
          "name",
          TextKind.NAME,
          DefaultValue.derived("obstacle 1, obstacle 2 and so on"),
          "What it is: radiator, beam, pipe.");
  static final Parameter<Double> OBSTACLE_LEFT =
      place("left", -50_000, "Where it begins, from the wall's left edge to the right.");
  static final Parameter<Double> OUT =
      place("out", -10_000, "Where it begins, from the foot of the face toward the climber.");
  static final Parameter<Double> LOW = place("low", 0, "Where it begins, above the floor.");
  static final Parameter<Double> WIDTH = size("width", "Its width along the wall.");
  static final Parameter<Double> DEPTH = size("depth", "Its depth toward the climber.");
  static final Parameter<Double> HEIGHT = size("height", "Its height.");

  static final TableSpec OBSTACLES =
      new TableSpec(
          "obstacle",
          true,
          "Something in the room that the wall and whoever falls must keep clear of.",
          List.of(NAME, OBSTACLE_LEFT, OUT, LOW, WIDTH, DEPTH, HEIGHT),
          List.of());

  static final Parameter<Double> THICKNESS =
      new Parameter<>(
          "thickness",
          LengthKind.length(50, 1000),
          DefaultValue.derived("none: the matting is not told"),
          "Thickness of the mats on the floor.");
  static final Parameter<Double> MAT_FRONT =
      new Parameter<>(
          "front",
          LengthKind.length(0, 20_000),
          DefaultValue.derived("all of the fall zone"),
          "How far the mats reach in front of the wall's outermost edge.");
  static final Parameter<Double> MAT_SIDE =
      new Parameter<>(
          "side",
          LengthKind.length(0, 20_000),
          DefaultValue.derived("as far as in front of it, or to what ends the room"),
          "How far the mats reach beyond each end of the wall.");
  static final TableSpec MAT =
      new TableSpec(
          "mat", false, "What people fall on.", List.of(THICKNESS, MAT_FRONT, MAT_SIDE), List.of());

  static final Parameter<Double> TIMBER_DENSITY =
      new Parameter<>(
          "timber-density",
          new NumberKind(new Range(200, 1200), "kg/m3"),
          DefaultValue.number(420),
          "What the framing timber weighs.");
  static final Parameter<Double> SHEET_DENSITY =
      new Parameter<>(
          "sheet-density",
          new NumberKind(new Range(200, 1200), "kg/m3"),
          DefaultValue.number(680),
          "What the plywood weighs.");
  static final Parameter<Double> PER_PERSON =
      new Parameter<>(
          "per-person",
          new NumberKind(new Range(5, 60), "kg"),
          DefaultValue.number(25),
          "What one person is to lift at most.");
  static final Parameter<BringIn> BRING_IN =
      new Parameter<>(
          "bring-in",
          new WordKind<>(List.of(BringIn.values())),
          DefaultValue.word(BringIn.PARTS),
          "What is carried into the room: sticks and sheets, or frames that were built elsewhere."
              + " A facet that is told as two of one angle comes in two frames, bolted together"
              + " where they meet.");
  static final TableSpec HANDLING =
      new TableSpec(
          "handling",
          false,
          "What things weigh and who lifts them.",
          List.of(TIMBER_DENSITY, SHEET_DENSITY, PER_PERSON, BRING_IN),
          List.of());

  private RoomTable() {}

  private static List<Parameter<?>> keys() {
    List<Parameter<?>> keys = new ArrayList<>(CeilingKeys.HEIGHTS);
    keys.addAll(List.of(LEFT, RIGHT, FRONT));
    keys.addAll(CeilingKeys.CARRIERS);
    keys.addAll(
        List.of(
            NO_DRILL,
            FLOOR_FALL,
            FLOOR_PITCH,
            DOOR_WIDTH,
            DOOR_HEIGHT,
            STAIR_WIDTH,
            STAIR_HEIGHT,
            DOOR_PASSAGE,
            STAIR_LANDING));
    return keys;
  }

  private static Parameter<Double> untold(String key, double least, double most, String meaning) {
    return new Parameter<>(
        key, LengthKind.length(least, most), DefaultValue.derived(UNTOLD), meaning);
  }

  private static Parameter<Double> turn(String key, String meaning) {
    return new Parameter<>(
        key,
        LengthKind.length(300, 10_000),
        DefaultValue.derived("none: things come straight"),
        meaning);
  }

  private static Parameter<Double> place(String key, double least, String meaning) {
    return new Parameter<>(
        key, LengthKind.length(least, 50_000), DefaultValue.length("0 mm", "0 in"), meaning);
  }

  private static Parameter<Double> size(String key, String meaning) {
    return new Parameter<>(
        key, LengthKind.length(1, 50_000), DefaultValue.length("300 mm", "12 in"), meaning);
  }

  static Room record(Contents contents) {
    Values room = contents.in(TABLE);
    return new Room(
        new Sides(room.given(LEFT), room.given(RIGHT), room.given(FRONT)),
        CeilingKeys.record(room),
        new Ways(
            way(room, DOOR_WIDTH, DOOR_HEIGHT, DOOR_PASSAGE),
            way(room, STAIR_WIDTH, STAIR_HEIGHT, STAIR_LANDING)),
        room.get(NO_DRILL),
        new Floor(room.get(FLOOR_FALL), room.get(FLOOR_PITCH)),
        obstacles(contents.all(OBSTACLES)),
        mat(contents.in(MAT)),
        handling(contents.in(HANDLING)));
  }

  private static Way way(
      Values room, Parameter<Double> width, Parameter<Double> height, Parameter<Double> turn) {
    return new Way(room.given(width), room.given(height), room.given(turn));
  }

  private static List<Obstacle> obstacles(List<Values> given) {
    return IntStream.range(0, given.size())
        .mapToObj(
            at -> {
              Values one = given.get(at);
              return new Obstacle(
                  one.given(NAME).orElse("obstacle " + (at + 1)),
                  new Obstacle.Corner(one.get(OBSTACLE_LEFT), one.get(OUT), one.get(LOW)),
                  new Obstacle.Size(one.get(WIDTH), one.get(DEPTH), one.get(HEIGHT)));
            })
        .toList();
  }

  private static Mat mat(Values mat) {
    return new Mat(mat.given(THICKNESS), mat.given(MAT_FRONT), mat.given(MAT_SIDE));
  }

  private static Handling handling(Values handling) {
    return new Handling(
        handling.get(TIMBER_DENSITY),
        handling.get(SHEET_DENSITY),
        handling.get(PER_PERSON),
        handling.get(BRING_IN));
  }
}
