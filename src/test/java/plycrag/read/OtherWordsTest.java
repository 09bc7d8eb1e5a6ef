package plycrag.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.TestFiles;
import plycrag.finding.Finding;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;

/** What people write for things that have another name here. */
class OtherWordsTest {

  @ParameterizedTest
  @CsvSource({
    "facet, overhang, here that is facet.angle",
    "facet, Height, here that is facet.vertical-height",
    "room, height, here that is room.ceiling",
    "inserts, spacing, here that is inserts.pitch-across",
    "frame, spacing, here that is frame.stud-spacing",
    "wall, holds, here that is the table [inserts]",
    "wall, stud_size, here that is frame.section",
  })
  void aWordLeadsToWhatTellsIt(String table, String word, String told) {
    TableSpec spec = ParameterTable.find(table).orElseThrow();
    String facet = table.equals("facet") ? "" : "[[facet]]\n";
    assertThat(findings(facet + spec.header() + "\n" + word + " = 3\n"))
        .singleElement()
        .extracting(Finding::sentence)
        .asString()
        .startsWith("there is no such key; " + told + "; in " + spec.header());
  }

  @ParameterizedTest
  @CsvSource({"holds, inserts", "studs, frame", "plywood, sheet", "legs, support"})
  void aTableOfAnotherNameLeadsToItsOwn(String typed, String table) {
    assertThat(findings("[[facet]]\n[" + typed + "]\nspacing = 200\n"))
        .singleElement()
        .extracting(Finding::sentence)
        .asString()
        .startsWith("there is no such table; here that is the table [" + table + "]; wall, facet");
  }

  @Test
  void whoeverWritesAKickHasToldAFacet() {
    assertThat(findings("[[kick]]\nlength = 300\n"))
        .singleElement()
        .extracting(Finding::sentence)
        .asString()
        .startsWith("there is no such table; here that is the table [[facet]]; ");
  }

  @Test
  void whatIsMeantIsDeclaredAndNoWordIsDeclaredItself() {
    Set<String> declared = new HashSet<>(ParameterTable.names());
    for (TableSpec table : ParameterTable.TABLES) {
      table.parameters().stream()
          .map(Parameter::key)
          .forEach(key -> declared.add(table.name() + "." + key));
    }
    for (OtherWords.Entry entry : OtherWords.ENTRIES) {
      assertThat(declared).contains(entry.meant());
      for (String word : entry.words()) {
        assertThat(ParameterTable.names()).doesNotContain(word);
        assertThat(OtherWords.find(entry.table(), word)).as(word).contains(entry.meant());
        assertThat(declared).doesNotContain(entry.table() + "." + word);
      }
    }
  }

  private static List<Finding> findings(String toml) {
    return ParameterFile.read("bay.toml", TestFiles.bytes(toml)).findings();
  }
}
