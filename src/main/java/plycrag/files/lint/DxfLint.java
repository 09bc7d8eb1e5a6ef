package plycrag.files.lint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds what readers of DXF refuse or silently mend, above all what ezdxf's audit lets pass: a
 * radius that is no number, an undeclared layer, an entity of another version, a duplicate. The
 * sources stand beside each check.
 */
public final class DxfLint {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]{1,4})?");
  private static final Pattern WHOLE = Pattern.compile("-?[0-9]+");
  private static final Pattern ZERO_BELOW = Pattern.compile("-0(\\.0*)?");
  private static final Pattern LAYER = Pattern.compile("[A-Z0-9_]{1,31}");
  private static final Set<String> BOTH = Set.of("LINE", "CIRCLE", "ARC", "TEXT", "POINT");
  private static final Set<String> OLD = Set.of("POLYLINE", "VERTEX", "SEQEND");

  private final DxfTags file;
  private final List<String> faults = new ArrayList<>();
  private final boolean since2000;

  private DxfLint(DxfTags file) {
    this.file = file;
    this.since2000 = file.header("$ACADVER").contains(new DxfTags.Tag(1, "AC1015"));
  }

  /** All faults of a file, each a sentence; none if it is sound. */
  public static List<String> faults(String text) {
    DxfTags file;
    try {
      file = DxfTags.read(text);
    } catch (IllegalArgumentException broken) {
      return List.of("not DXF: " + broken.getMessage());
    }
    DxfLint lint = new DxfLint(file);
    lint.check(!text.chars().anyMatch(c -> c > '~'), "not ASCII");
    lint.end();
    lint.numbers();
    if (lint.faults.isEmpty()) {
      lint.meaning();
    }
    return List.copyOf(lint.faults);
  }

  private void meaning() {
    version();
    names();
    handles();
    views();
    faults.addAll(DxfOverlaps.faults(file));
  }

  private void check(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }

  /** A file without its end hangs some readers; found by trying. */
  private void end() {
    List<DxfTags.Entry> records = file.records();
    boolean ends = !records.isEmpty() && records.get(records.size() - 1).type().equals("EOF");
    check(ends, "no EOF");
  }

  /** Which codes are real and which whole: DXF reference, "Group code value types". */
  private void numbers() {
    file.records().stream()
        .flatMap(entry -> entry.tags().stream())
        .forEach(
            tag -> {
              String what = tag.code() + " " + tag.value();
              if (isReal(tag.code())) {
                check(NUMBER.matcher(tag.value()).matches(), "not a number: " + what);
                check(!ZERO_BELOW.matcher(tag.value()).matches(), "zero below zero: " + what);
              } else if (isWhole(tag.code())) {
                check(WHOLE.matcher(tag.value()).matches(), "not a whole number: " + what);
              }
            });
  }

  private static boolean isReal(int code) {
    return within(code, 10, 59) || within(code, 140, 149) || within(code, 210, 239);
  }

  private static boolean isWhole(int code) {
    return within(code, 60, 99) || within(code, 170, 179) || within(code, 270, 289);
  }

  private static boolean within(int code, int least, int greatest) {
    return code >= least && code <= greatest;
  }

  /** LWPOLYLINE, handles and markers are not of R12; POLYLINE is not how R2000 draws in a plane. */
  private void version() {
    check(since2000 || file.header("$ACADVER").contains(new DxfTags.Tag(1, "AC1009")), "version");
    for (DxfTags.Entry entity : file.entities()) {
      String type = entity.type();
      boolean known =
          BOTH.contains(type) || (since2000 ? "LWPOLYLINE".equals(type) : OLD.contains(type));
      check(known, "of another version: " + type);
      check(entity.text(100).isPresent() == since2000, "subclass marker of " + type);
    }
    if (since2000) {
      check(file.header("$INSUNITS").equals(List.of(new DxfTags.Tag(70, "4"))), "no millimetres");
      check(file.header("$MEASUREMENT").equals(List.of(new DxfTags.Tag(70, "1"))), "not metric");
    } else {
      check(file.header("$INSUNITS").isEmpty(), "of another version: $INSUNITS");
    }
  }

  /** Every layer and linetype declared before use; names that R12 takes. */
  private void names() {
    Set<String> linetypes = names("LTYPE");
    Set<String> layers = names("LAYER");
    check(layers.contains("0"), "undeclared layer: 0");
    check(layers.size() == file.table("LAYER").size(), "layer declared twice");
    for (DxfTags.Entry layer : file.table("LAYER")) {
      String name = layer.text(2).orElse("");
      String linetype = layer.text(6).orElse("");
      check(LAYER.matcher(name).matches(), "layer name: " + name);
      check(linetypes.contains(linetype), "undeclared linetype: " + linetype);
    }
    file.entities()
        .forEach(
            entity ->
                check(layers.contains(entity.layer()), "undeclared layer: " + entity.layer()));
  }

  private Set<String> names(String table) {
    return file.table(table).stream()
        .map(entry -> entry.text(2).orElse(""))
        .collect(Collectors.toSet());
  }

  /** R2000: each record has a handle of its own below the seed, and an owner that exists. */
  private void handles() {
    int seed = seed();
    Set<String> seen = new HashSet<>(Set.of("0"));
    List<DxfTags.Entry> entries = file.records().stream().filter(DxfLint::hasHandle).toList();
    for (DxfTags.Entry entry : entries) {
      String handle = handle(entry);
      check(!handle.isEmpty() == since2000, "handle of " + entry.type());
      check(handle.isEmpty() || seen.add(handle), "handle twice: " + handle);
      check(handle.isEmpty() || value(handle) < seed, "handle above the seed: " + handle);
    }
    entries.forEach(
        entry -> {
          String owner = entry.text(330).orElse("");
          check(since2000 ? seen.contains(owner) : owner.isEmpty(), "owner of " + entry.type());
        });
  }

  private static boolean hasHandle(DxfTags.Entry entry) {
    return !entry.section().isEmpty()
        && !Set.of("SECTION", "ENDSEC", "ENDTAB", "EOF").contains(entry.type());
  }

  private static String handle(DxfTags.Entry entry) {
    return entry.text(entry.type().equals("DIMSTYLE") ? 105 : 5).orElse("");
  }

  private int seed() {
    List<DxfTags.Tag> seed = file.header("$HANDSEED");
    return seed.isEmpty() ? 0 : value(seed.get(0).value());
  }

  private static int value(String handle) {
    return Integer.parseInt(handle, 16);
  }

  /** Without these some readers open an empty window. */
  private void views() {
    check(file.header("$EXTMIN").size() == 3, "no $EXTMIN");
    check(file.header("$EXTMAX").size() == 3, "no $EXTMAX");
    check(names("VPORT").contains("*ACTIVE"), "no active viewport");
  }
}
