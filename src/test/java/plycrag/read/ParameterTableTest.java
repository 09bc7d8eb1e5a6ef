package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.units.LengthUnit;

/** The declarations agree with themselves. */
class ParameterTableTest {

  static List<TableSpec> tables() {
    return ParameterTable.TABLES;
  }

  @ParameterizedTest
  @MethodSource("tables")
  void keysAreUniqueAndExplained(TableSpec table) {
    assertThat(table.parameters()).extracting(Parameter::key).doesNotHaveDuplicates();
    assertThat(table.parameters())
        .allSatisfy(parameter -> assertThat(parameter.meaning()).matches("[A-Z].*\\."))
        .allSatisfy(parameter -> assertThat(parameter.key()).matches("[a-z]+(-[a-z]+)*"));
    assertThat(table.meaning()).endsWith(".");
  }

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void defaultsAreInRange(LengthUnit unit) {
    for (TableSpec table : ParameterTable.TABLES) {
      for (Parameter<?> parameter : table.parameters()) {
        Optional<?> standard = parameter.standard().in(unit);
        if (parameter.kind() instanceof LengthKind kind && standard.isPresent()) {
          assertThat(kind.range().holds((Double) standard.get())).as(parameter.key()).isTrue();
        }
        if (parameter.kind() instanceof NumberKind kind && standard.isPresent()) {
          assertThat(kind.range().holds((Double) standard.get())).as(parameter.key()).isTrue();
        }
      }
    }
  }
}
