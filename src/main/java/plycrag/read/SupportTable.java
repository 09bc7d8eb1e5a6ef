package plycrag.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.NumberListKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.SectionKind;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.units.LengthUnit;
import plycrag.wall.Frame;
import plycrag.wall.buying.Section;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Across;
import plycrag.wall.room.GivenSupport.Base;
import plycrag.wall.room.GivenSupport.Bracing;
import plycrag.wall.room.GivenSupport.Fixing;
import plycrag.wall.room.GivenSupport.Hinge;
import plycrag.wall.room.GivenSupport.Hold;
import plycrag.wall.room.GivenSupport.Kind;
import plycrag.wall.room.GivenSupport.Lateral;
import plycrag.wall.room.GivenSupport.Timber;
import plycrag.wall.room.Supports;

/** The keys of {@code [support]}. */
final class SupportTable {
  private static final LengthKind DEPTH = LengthKind.length(40, 300);
  private static final double LEDGER_OFF_MM = 90;
  private static final double LEDGER_OFF_IN = 88.9;

  static final Parameter<Kind> KIND =
      new Parameter<>(
          "kind",
          new WordKind<>(List.of(Kind.values())),
          DefaultValue.derived("none: the frame only, and what holds it up is yours to design"),
          "What holds the wall up: ties to a building's wall, posts of its own, hangers from a"
              + " ceiling, or a hinge at its foot with something that can be made longer.");
  static final Parameter<Double> BAY =
      new Parameter<>(
          "bay",
          LengthKind.length(300, 3000),
          DefaultValue.length("1200 mm", "48 in"),
          "Greatest distance between supports along the wall; they stand where studs do.");
  static final Parameter<Double> BEHIND =
      new Parameter<>(
          "behind",
          LengthKind.length(0, 5000),
          DefaultValue.length("600 mm", "24 in"),
          "How far the posts, or the building's wall, stand behind the hindmost of the frame: 100 mm"
              + " (4 in) or more, or 0 for a plumb frame that lies flat on the wall it is fixed to.");
  static final Parameter<Double> FRONT =
      new Parameter<>(
          "front",
          LengthKind.length(0, 5000),
          DefaultValue.derived("as far as the wall leans out"),
          "How far base rails reach in front of the wall's foot, under the mat.");
  static final Parameter<Lateral> LATERAL =
      new Parameter<>(
          "lateral",
          new WordKind<>(List.of(Lateral.values())),
          DefaultValue.derived("braces for posts, else sheets"),
          "What keeps it from swaying along the wall: slanting braces across the posts, knee braces"
              + " between the posts and a beam along their tops, or the sheets, which make the"
              + " frame stiff down to a plate that is fixed to the floor.");
  static final Parameter<Across> ACROSS =
      new Parameter<>(
          "across",
          new WordKind<>(List.of(Across.values())),
          DefaultValue.word(Across.BRACES),
          "What keeps posts from leaning toward the wall or away from it: braces from their feet,"
              + " or knee braces under the ties, which leave the space behind the wall free; posts of a hinged"
              + " wall have braces behind them in any case.");
  static final Parameter<Double> KNEE =
      new Parameter<>(
          "knee",
          LengthKind.length(300, 2000),
          DefaultValue.length("600 mm", "24 in"),
          "How far a knee brace reaches from its corner, down and along alike; it is made shorter"
              + " where the next one, the frame or a rail is in its way.");
  static final Parameter<Base> FIXED_TO =
      new Parameter<>(
          "fixed-to",
          new WordKind<>(List.of(Base.values())),
          DefaultValue.derived("none: it is needed where the wall is fixed or hinged"),
          "What the building's wall is made of where ledgers are fixed to it; posts for a hinged wall"
              + " that stands by itself, on posts of its own.");
  static final Parameter<Double> ANCHOR_SPACING =
      new Parameter<>(
          "anchor-spacing",
          LengthKind.length(100, 1200),
          DefaultValue.length("400 mm", "16 in"),
          "Greatest distance between anchors in masonry or concrete.");
  static final Parameter<Double> FIRST_STUD =
      new Parameter<>(
          "first-stud",
          LengthKind.length(0, 1200),
          DefaultValue.length("0 mm", "0 in"),
          "Where the first stud of the building's wall stands, from the wall's left to its"
              + " middle.");
  static final Parameter<Double> STUD_SPACING =
      new Parameter<>(
          "building-stud-spacing",
          LengthKind.length(200, 1200),
          DefaultValue.length("400 mm", "16 in"),
          "From stud to stud of the building's wall, middle to middle.");
  static final Parameter<Hold> HOLD =
      new Parameter<>(
          "hold",
          new WordKind<>(List.of(Hold.values())),
          DefaultValue.word(Hold.CHAINS),
          "What holds a hinged facet at its angle; a second one that works by itself goes beside"
              + " each.");
  static final Parameter<List<Double>> ANGLES =
      new Parameter<>(
          "angles",
          new NumberListKind(new NumberKind(new Range(0, 80), "degrees"), 12),
          DefaultValue.derived("the facet's own angle alone"),
          "The angles that a hinged facet is used at; every one is drawn and checked.");
  static final Parameter<Double> ANCHOR_HEIGHT =
      new Parameter<>(
          "anchor-height",
          LengthKind.length(500, 10_000),
          DefaultValue.derived("as high as it is held at the least of its angles"),
          "Where a hinged facet is held on the building, above the floor.");
  static final Parameter<Double> ATTACH =
      new Parameter<>(
          "attach",
          LengthKind.length(100, 20_000),
          DefaultValue.derived("near its upper edge"),
          "Where a hinged facet is held, from its lower edge up the slope.");

  static final Parameter<Double> RAIL =
      new Parameter<>(
          "rail-depth",
          DEPTH,
          DefaultValue.length("140 mm", "5.5 in"),
          "How high base rails lie on the floor; they are as thick as the frame's timber.");
  static final Parameter<Double> POST =
      new Parameter<>(
          "post-depth",
          DEPTH,
          DefaultValue.derived("as deep as the frame"),
          "How deep posts are; they are as thick as the frame's timber.");
  static final Parameter<Double> TIE =
      new Parameter<>(
          "tie-depth",
          DEPTH,
          DefaultValue.derived("as deep as the frame"),
          "How deep ties and hangers are; they are as thick as the frame's timber.");
  static final Parameter<Double> BRACE =
      new Parameter<>(
          "brace-depth",
          DEPTH,
          DefaultValue.derived("as deep as the frame"),
          "How deep braces and knee braces are; they are as thick as the frame's timber.");
  static final Parameter<Section> LEDGER =
      new Parameter<>(
          "ledger-section",
          new SectionKind(LengthKind.length(35, 300)),
          DefaultValue.derived("90 mm (3.5 in) off the building, as high as ties are deep"),
          "Timber of ledgers: how far it stands off the building or the ceiling, and its other side.");

  static final TableSpec TABLE =
      new TableSpec(
          "support",
          false,
          "What holds the wall up.",
          List.of(
              KIND,
              BAY,
              BEHIND,
              FRONT,
              LATERAL,
              ACROSS,
              KNEE,
              FIXED_TO,
              ANCHOR_SPACING,
              FIRST_STUD,
              STUD_SPACING,
              HOLD,
              ANGLES,
              ANCHOR_HEIGHT,
              ATTACH,
              RAIL,
              POST,
              TIE,
              BRACE,
              LEDGER),
          List.of());

  /** Stands in a facet's table. */
  static final TableSpec OF_FACET =
      new TableSpec(
          TABLE.name(),
          false,
          "What holds this facet up, where that is not what `[support]` tells: a roof that hangs"
              + " over a wall that is fixed, a wall on posts beside another. It stands below the"
              + " keys of its `[[facet]]`. The keys are those of `[support]`; one that is left out"
              + " is as `[support]` has it.",
          TABLE.parameters(),
          List.of());

  private SupportTable() {}

  /**
   * What is told of a facet's own support, filled with what is told of the wall's.
   *
   * @param facets the facets' tables
   * @return by the facet's place among them, in order
   */
  static SortedMap<Integer, Values> own(Values usual, List<Values> facets) {
    SortedMap<Integer, Values> own = new TreeMap<>();
    for (int at = 0; at < facets.size(); at++) {
      Optional<Values> told = facets.get(at).inner(OF_FACET);
      if (told.isPresent()) {
        own.put(at, told.get().or(usual));
      }
    }
    return own;
  }

  /**
   * The records.
   *
   * @param facets the facets' tables
   * @param names the facets' names
   * @param frame as deep as which timber is where nothing else is told
   */
  static Supports record(Values usual, List<Values> facets, List<String> names, Frame frame) {
    Map<String, GivenSupport> own = new LinkedHashMap<>();
    own(usual, facets)
        .forEach((at, told) -> record(told, frame).ifPresent(one -> own.put(names.get(at), one)));
    return new Supports(record(usual, frame), own);
  }

  private static Optional<GivenSupport> record(Values values, Frame frame) {
    return values.given(KIND).map(kind -> record(kind, values, frame));
  }

  private static Timber timber(Values values, Frame frame) {
    double tie = values.given(TIE).orElse(frame.depth());
    double off = values.unit() == LengthUnit.MM ? LEDGER_OFF_MM : LEDGER_OFF_IN;
    return new Timber(
        values.get(RAIL),
        values.given(POST).orElse(frame.depth()),
        tie,
        values.given(BRACE).orElse(frame.depth()),
        values.given(LEDGER).orElse(new Section(off, tie)));
  }

  private static GivenSupport record(Kind kind, Values values, Frame frame) {
    boolean standsOnPosts = values.given(FIXED_TO).filter(base -> base == Base.POSTS).isPresent();
    boolean onPosts = kind == Kind.FREESTANDING || (kind == Kind.HINGED && standsOnPosts);
    Lateral usual = onPosts ? Lateral.BRACES : Lateral.SHEETS;
    return new GivenSupport(
        kind,
        values.get(BAY),
        values.get(BEHIND),
        values.given(FRONT),
        new Bracing(values.given(LATERAL).orElse(usual), values.get(ACROSS), values.get(KNEE)),
        new Fixing(
            values.given(FIXED_TO),
            values.get(ANCHOR_SPACING),
            values.get(FIRST_STUD),
            values.get(STUD_SPACING)),
        new Hinge(
            values.get(HOLD),
            values.given(ANGLES).orElse(List.of()).stream().sorted().distinct().toList(),
            values.given(ANCHOR_HEIGHT),
            values.given(ATTACH)),
        timber(values, frame));
  }
}
