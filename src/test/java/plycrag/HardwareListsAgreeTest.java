package plycrag;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.SampleLists.layout;
import static plycrag.SampleLists.list;
import static plycrag.SampleLists.number;
import static plycrag.SampleLists.quantity;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.util.DoubleComparator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.solve.fixing.FacePlace;
import plycrag.solve.fixing.SteelChoice;

/** The lists of hardware of every sample against its layout and each other. */
class HardwareListsAgreeTest {
  /** How closely lists tell lengths; rounded once more, halves could go either way. */
  private static final Comparator<Double> PRINTED = new DoubleComparator(0.001);

  static List<Path> samples() {
    return TestFiles.samples();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void whatTheJointsTakeIsBought(Path sample) {
    Layout layout = layout(sample);
    List<CSVRecord> joints = list(sample, "joints.csv");
    assertThat(joints).extracting(row -> row.get("mark")).doesNotHaveDuplicates();
    assertThat(joints).hasSize(layout.joints().size());
    int brackets = taken(joints, "bracket");
    int straps = taken(joints, "strap");
    int bolts = taken(joints, "bolt");
    assertThat(quantity(sample, "bracket")).isEqualTo(brackets);
    assertThat(quantity(sample, "strap")).isEqualTo(straps);
    assertThat(quantity(sample, "hinge")).isEqualTo(taken(joints, "hinge"));
    assertThat(quantity(sample, "bracket screw"))
        .isEqualTo(steelScrews(joints, layout.wall().joints().bracketScrews()));
    assertThat(quantity(sample, "bolt")).isEqualTo(bolts);
    assertThat(quantity(sample, "nut")).isEqualTo(bolts);
    assertThat(quantity(sample, "washer")).isEqualTo(2 * bolts);
    assertThat(quantity(sample, "joint screw")).isEqualTo(taken(joints, "screw"));
  }

  private static int steelScrews(List<CSVRecord> joints, int unsized) {
    return joints.stream()
        .filter(row -> List.of("bracket", "strap", "hinge").contains(row.get("hardware")))
        .mapToInt(
            row ->
                Integer.parseInt(row.get("quantity"))
                    * (row.get("screws_each").isEmpty()
                        ? unsized
                        : Integer.parseInt(row.get("screws_each"))))
        .sum();
  }

  /** Every joint's hardware, counted from the layout and from the list. */
  @ParameterizedTest
  @MethodSource("samples")
  void theListHasTheHardwareOfTheLayout(Path sample) {
    Layout layout = layout(sample);
    Map<String, CSVRecord> rows = new TreeMap<>();
    list(sample, "joints.csv").forEach(row -> rows.put(row.get("mark"), row));
    for (Joint joint : layout.joints()) {
      CSVRecord row = rows.get(joint.mark());
      layout
          .fixings()
          .throughOf(joint)
          .ifPresent(
              screws -> {
                assertThat(number(row, "quantity")).isEqualTo(screws.spots().size());
                assertThat(places(row, "screw_along_mm"))
                    .usingElementComparator(PRINTED)
                    .containsExactlyElementsOf(
                        screws.spots().stream().map(FacePlace::along).toList());
                assertThat(places(row, "screw_across_mm"))
                    .usingElementComparator(PRINTED)
                    .containsExactlyElementsOf(
                        screws.spots().stream().map(FacePlace::across).toList());
              });
      layout
          .fixings()
          .steelOf(joint)
          .flatMap(SteelChoice::fit)
          .ifPresentOrElse(
              fit -> {
                assertThat(number(row, "screws_each")).isEqualTo(fit.screws());
                assertThat(number(row, "diameter_mm")).isEqualTo(fit.diameter());
                assertThat(row.get("steel_mm")).isNotEmpty();
              },
              () -> assertThat(row.get("steel_mm")).isEmpty());
    }
    assertThat(rows).hasSize(layout.joints().size());
  }

  /** A label for every member and every piece, and for nothing else. */
  @ParameterizedTest
  @MethodSource("samples")
  void everyPartHasALabel(Path sample) {
    String folder = sample.getFileName().toString().replace(".toml", "");
    String page = TestFiles.read(Path.of("out-samples", folder, "labels.html"));
    List<String> parts = new ArrayList<>();
    for (FacetLayout facet : layout(sample).facets()) {
      facet.members().forEach(member -> parts.add(member.mark()));
      facet.pieces().forEach(piece -> parts.add(piece.mark()));
    }
    layout(sample).standing().forEach(placed -> parts.add(placed.member().mark()));
    layout(sample).fixings().gussets().forEach(gusset -> parts.add(gusset.mark()));
    layout(sample).offcuts().strips().forEach(strip -> parts.add(strip.mark()));
    assertThat(
            Pattern.compile("<p class=\"mark\">([^<]*)</p>")
                .matcher(page)
                .results()
                .map(match -> match.group(1)))
        .containsExactlyInAnyOrderElementsOf(parts)
        .doesNotHaveDuplicates();
  }

  private static int taken(List<CSVRecord> joints, String hardware) {
    return joints.stream()
        .filter(row -> row.get("hardware").equals(hardware))
        .mapToInt(row -> Integer.parseInt(row.get("quantity")))
        .sum();
  }

  private List<Double> places(CSVRecord row, String column) {
    return Pattern.compile(" ").splitAsStream(row.get(column)).map(Double::parseDouble).toList();
  }
}
