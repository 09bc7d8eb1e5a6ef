package plycrag.read;

import java.util.List;
import java.util.Optional;
import org.tomlj.Toml;
import org.tomlj.TomlParseOptions;
import org.tomlj.TomlParseResult;
import plycrag.finding.Finding;
import plycrag.read.schema.Syntax;
import plycrag.read.schema.TomlTables;
import plycrag.read.schema.Values;
import plycrag.read.text.Context;
import plycrag.read.text.Faults;
import plycrag.read.text.Located;
import plycrag.read.text.SourcePlace;
import plycrag.read.text.SourceText;
import plycrag.units.LengthUnit;

/** Reads a parameter file. */
public final class ParameterFile {
  private static final String ENDING = ".toml";

  private final String stem;
  private final Faults faults;
  private final Syntax syntax;
  private final TomlTables document;

  private ParameterFile(String fileName, String text, Faults faults) {
    TomlParseResult result = Toml.parse(text, TomlParseOptions.sourceless());
    this.stem = stem(fileName);
    this.faults = faults;
    this.syntax = Syntax.report(text, result, ParameterTable.TABLES, faults);
    this.document = new TomlTables(result);
  }

  /**
   * Reads a file.
   *
   * @param fileName as the user named it, with a path before it or without
   * @param content its bytes
   * @return the parameters, or everything that is wrong; no content makes it throw
   */
  public static Reading<Parameters> read(String fileName, byte[] content) {
    Faults faults = new Faults(fileName);
    Optional<ParameterFile> file =
        SourceText.decode(content, faults).map(text -> new ParameterFile(fileName, text, faults));
    Optional<Contents> contents = file.map(ParameterFile::validated);
    List<Finding> findings = faults.sorted();
    return new Reading<>(
        contents
            .filter(all -> findings.isEmpty())
            .map(all -> all.parameters(file.orElseThrow().stem)),
        findings);
  }

  /** The contents, after all that is wrong with them was reported. */
  private Contents validated() {
    Context context = new Context(unit(), faults);
    UnknownKeys unknown = new UnknownKeys(document, syntax, faults);
    unknown.report();
    Contents contents = Contents.read(new DocumentReader(document, syntax, context));
    if (syntax.isWhole()) {
      checkFirstFacet(unknown);
      checkName(contents.in(WallTable.TABLE), context);
      contents.check(context);
    }
    return contents;
  }

  /** What bare numbers mean; none where the file means to say so and does not succeed. */
  private Optional<LengthUnit> unit() {
    Context unreported = new Context(Optional.of(LengthUnit.MM), new Faults(stem));
    Values wall = new DocumentReader(document, syntax, unreported).read(WallTable.TABLE);
    boolean known = wall.isGiven(WallTable.UNIT) || syntax.isWhole();
    return known && wall.isSound(WallTable.UNIT)
        ? Optional.of(wall.get(WallTable.UNIT))
        : Optional.empty();
  }

  private void checkFirstFacet(UnknownKeys unknown) {
    Located given = document.at(FacetTable.TABLE.name());
    boolean meant =
        syntax.isBroken(given.key()) || unknown.isMistyped(FacetTable.TABLE) || given.isOther();
    if (document.tables(FacetTable.TABLE).isEmpty() && !meant) {
      faults.add(
          given.key(), given.place(), "there is no [[facet]]", "one is needed, even an empty one");
    }
  }

  /** The name of the file stands in for the wall's name only if it could be one. */
  private void checkName(Values wall, Context context) {
    if (!wall.isGiven(WallTable.NAME)) {
      Located named = new Located(wall.key(WallTable.NAME), SourcePlace.START, stem);
      WallTable.NAME.kind().read(named, context);
    }
  }

  private static String stem(String fileName) {
    int folder = Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\'));
    String name = fileName.substring(folder + 1);
    String stem = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    return stem.replace('-', ' ');
  }
}
