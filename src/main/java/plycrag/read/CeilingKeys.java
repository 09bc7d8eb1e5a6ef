package plycrag.read;

import java.util.List;
import java.util.Optional;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.SectionKind;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.read.text.Faults;
import plycrag.wall.buying.Section;
import plycrag.wall.room.Ceiling;
import plycrag.wall.room.Ceiling.KneeWall;
import plycrag.wall.room.Ceiling.Pitch;
import plycrag.wall.room.Room.Joists;
import plycrag.wall.room.Room.Members;
import plycrag.wall.room.Room.Run;

/** The keys of {@code [room]} that tell what is above. */
final class CeilingKeys {
  static final Parameter<Double> CEILING =
      new Parameter<>(
          "ceiling",
          LengthKind.length(1000, 20_000),
          DefaultValue.derived("none: it is not judged"),
          "Height of the ceiling above the foot of the wall's face; where it rises or falls along"
              + " the wall, at the wall's left.");
  static final Parameter<Double> PITCH =
      pitch(
          "ceiling-pitch",
          "How steeply the ceiling rises toward the climber; below zero it falls.");
  static final Parameter<Double> PITCH_ACROSS =
      pitch(
          "ceiling-pitch-across",
          "How steeply the ceiling rises to the right along the wall; below zero it falls.");
  static final Parameter<Double> KNEE_WALL =
      new Parameter<>(
          "knee-wall-height",
          LengthKind.length(0, 10_000),
          DefaultValue.derived("none: there is no such wall"),
          "Height of a low wall behind, on which rafters stand that rise toward the climber, up to"
              + " where they begin. Where there is a ceiling too, the lower of the two ends the"
              + " room.");
  static final Parameter<Double> KNEE_WALL_BEHIND =
      new Parameter<>(
          "knee-wall-behind",
          LengthKind.length(0, 20_000),
          DefaultValue.length("0 mm", "0 in"),
          "How far behind the foot of the wall's face that low wall stands.");
  static final Parameter<Double> RAFTER_PITCH =
      new Parameter<>(
          "rafter-pitch",
          new NumberKind(new Range(1, 80), "degrees"),
          DefaultValue.derived("none: it is needed beside knee-wall-height"),
          "How steeply the rafters over that low wall rise toward the climber.");
  static final Parameter<Members> MEMBERS =
      new Parameter<>(
          "ceiling-members",
          new WordKind<>(List.of(Members.values())),
          DefaultValue.word(Members.UNKNOWN),
          "What carries the ceiling; a wall hangs from joists alone.");
  static final Parameter<Section> JOIST_SECTION =
      new Parameter<>(
          "joist-section",
          new SectionKind(LengthKind.length(30, 400)),
          DefaultValue.derived("none: it is needed where the wall is hung"),
          "Section of a ceiling joist, its breadth first.");
  static final Parameter<Double> JOIST_SPAN =
      new Parameter<>(
          "joist-span",
          LengthKind.length(300, 15_000),
          DefaultValue.derived("none: it is needed where the wall is hung"),
          "How far a ceiling joist reaches from support to support.");
  static final Parameter<Double> JOIST_SPACING =
      new Parameter<>(
          "joist-spacing",
          LengthKind.length(150, 2000),
          DefaultValue.length("400 mm", "16 in"),
          "From joist to joist, middle to middle.");
  static final Parameter<Double> JOIST_FIRST =
      new Parameter<>(
          "joist-first",
          LengthKind.length(0, 2000),
          DefaultValue.length("0 mm", "0 in"),
          "Where the middle of the first joist is, from the wall's left, or from the foot of its"
              + " face where joists run along it.");
  static final Parameter<Run> JOIST_RUN =
      new Parameter<>(
          "joist-run",
          new WordKind<>(List.of(Run.values())),
          DefaultValue.word(Run.OUT),
          "Whether joists run out from the wall toward the climber, or along it.");

  /** What tells how high it is. */
  static final List<Parameter<?>> HEIGHTS =
      List.of(CEILING, PITCH, PITCH_ACROSS, KNEE_WALL, KNEE_WALL_BEHIND, RAFTER_PITCH);

  /** What tells what carries it. */
  static final List<Parameter<?>> CARRIERS =
      List.of(MEMBERS, JOIST_SECTION, JOIST_SPAN, JOIST_SPACING, JOIST_FIRST, JOIST_RUN);

  private CeilingKeys() {}

  private static Parameter<Double> pitch(String key, String meaning) {
    return new Parameter<>(
        key, new NumberKind(new Range(-70, 70), "degrees"), DefaultValue.number(0), meaning);
  }

  /** Reports a low wall without its rafters, and rafters without their wall. */
  static void check(Values room, Faults faults) {
    if (room.isGiven(KNEE_WALL) && !room.isGiven(RAFTER_PITCH)) {
      faults.add(
          room.key(KNEE_WALL),
          room.place(KNEE_WALL),
          "a knee-wall-height stands without rafter-pitch",
          "how steeply the rafters over it rise is needed");
    }
    for (Parameter<Double> key : List.of(KNEE_WALL_BEHIND, RAFTER_PITCH)) {
      if (room.isGiven(key) && !room.isGiven(KNEE_WALL)) {
        faults.add(
            room.key(key),
            room.place(key),
            key.key() + " stands without a knee-wall-height",
            "it is allowed beside knee-wall-height alone");
      }
    }
  }

  static Ceiling record(Values room) {
    return new Ceiling(
        room.given(CEILING),
        new Pitch(room.get(PITCH), room.get(PITCH_ACROSS)),
        kneeWall(room),
        room.get(MEMBERS),
        new Joists(
            room.given(JOIST_SECTION),
            room.given(JOIST_SPAN),
            room.get(JOIST_SPACING),
            room.get(JOIST_FIRST),
            room.get(JOIST_RUN)));
  }

  private static Optional<KneeWall> kneeWall(Values room) {
    return room.given(KNEE_WALL)
        .map(
            height ->
                new KneeWall(
                    height, room.get(KNEE_WALL_BEHIND), room.given(RAFTER_PITCH).orElseThrow()));
  }
}
