package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import plycrag.TestFiles;

/**
 * The schema under a library of its own: it refuses nothing that is right, and most that is not.
 */
class ParameterSchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
          .getSchema(ParameterSchema.json());

  /** Whatever concerns one value alone; what values require of each other is left to us. */
  private static final Pattern OF_ONE_VALUE =
      Pattern.compile(
          "there is no such key|there is no such table|there is no \\[\\[facet]]|stands here"
              + "|stands in no table|is not among the|is not in the catalog|cannot serve as"
              + "|the list holds|[0-9] [a-z/]+ is too small|is too great|has no unit|is not a unit|decimal comma"
              + "|is not a number|is more than one length|has no rise|does not end with");

  /** Lengths as texts, whose ranges no expression tells. */
  private static final Set<String> BEYOND =
      Set.of("out-of-range-text.toml", "inches-with-three-digits.toml");

  static List<Path> samples() {
    return TestFiles.samples();
  }

  static List<Path> hardWalls() {
    return TestFiles.list(Path.of("src/test/resources/hard-walls"), ".toml");
  }

  static List<Path> starters() {
    return TestFiles.list(Path.of("src/main/resources/plycrag/starters"), ".toml");
  }

  @ParameterizedTest
  @MethodSource({"samples", "starters", "hardWalls"})
  void whatIsRightValidates(Path file) throws IOException {
    assertThat(faults(Files.readString(file))).isEmpty();
  }

  static List<Path> wrongInOneValue() throws IOException {
    return MustFailTest.files().stream()
        .filter(file -> !file.endsWith("not-utf-8.toml"))
        .filter(file -> !BEYOND.contains(String.valueOf(file.getFileName())))
        .filter(file -> OF_ONE_VALUE.matcher(messages(file)).find())
        .filter(file -> !Toml.parse(TestFiles.read(file)).hasErrors())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("wrongInOneValue")
  void whatIsWrongInOneValueFails(Path file) {
    assertThat(faults(TestFiles.read(file))).isNotEmpty();
  }

  @Test
  void mostKindsOfMistakesAreOfOneValue() throws IOException {
    assertThat(wrongInOneValue()).hasSizeGreaterThan(45);
    assertThat(BEYOND)
        .allSatisfy(
            name -> assertThat(faults(TestFiles.text("must-fail/parameters/" + name))).isEmpty());
  }

  private static String messages(Path file) {
    return TestFiles.read(file)
        .lines()
        .takeWhile(line -> line.startsWith("#"))
        .collect(Collectors.joining("\n"));
  }

  /** Common practice, no source: a sheet is 18 mm thick, which nobody means as inches. */
  @ParameterizedTest
  @CsvSource({
    "mm, 18, true",
    "in, 18, false",
    "in, 0.71, true",
    "mm, 0.71, false",
    "mm, '\"3/4 in\"', true",
    "in, '\"18 mm\"', true",
    "mm, '\"18\"', false",
    "mm, '\"0,75 in\"', false",
    "mm, '\"-18 mm\"', false",
    "mm, true, false",
  })
  void lengthsAreJudgedInTheUnitOfTheFile(String unit, String thickness, boolean isRight) {
    String toml =
        "[wall]\nunit = \"%s\"\n[[facet]]\n[sheet]\nthickness = %s\n".formatted(unit, thickness);
    assertThat(faults(toml).isEmpty()).isEqualTo(isRight);
    assertThat(ParameterFile.read("bay.toml", TestFiles.bytes(toml)).findings().isEmpty())
        .isEqualTo(isRight);
  }

  /** Inches are rounded outwards: the least and the greatest are still allowed. */
  @ParameterizedTest
  @CsvSource({"11.8110236220473, true", "11.811, false", "1968.503937, true", "1968.6, false"})
  void theEndsOfARangeAreAllowedInInches(String length, boolean isRight) {
    String toml = "[wall]\nunit = \"in\"\n[[facet]]\nlength = " + length + "\n";
    assertThat(faults(toml).isEmpty()).isEqualTo(isRight);
  }

  @Test
  void keysThatAreNeededAreRequired() {
    assertThat(faults("[[facet]]\n[[keep-out]]\nleft = 0\nlow = 0\nwidth = 50\nheight = 50\n"))
        .singleElement()
        .asString()
        .contains("rise");
  }

  private static List<String> faults(String toml) {
    TomlParseResult result = Toml.parse(toml);
    assertThat(result.errors()).isEmpty();
    Stream<Error> errors = SCHEMA.validate(result.toJson(), InputFormat.JSON).stream();
    return errors.map(Error::toString).toList();
  }
}
