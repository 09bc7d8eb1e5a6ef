package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.InsertMove;
import plycrag.layout.pattern.InsertSurroundings;
import plycrag.units.Tape;
import plycrag.wall.Inserts;
import plycrag.wall.Pattern;

/** Two inserts' flanges keep clear of each other. */
public final class InsertAgainstInsert implements Rule {
  @Override
  public String name() {
    return "insert-insert";
  }

  @Override
  public String promise() {
    return "Every insert's flange is clear of its neighbours.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    tooDense(layout).ifPresent(findings::add);
    for (FacetLayout facet : layout.facets()) {
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      InsertSurroundings around = facet.surroundings();
      addFindings(facet.inserts(), around, report, findings);
    }
    return findings;
  }

  /** Whether inserts are scattered nearer to each other than their flanges let them. */
  private Optional<Finding> tooDense(Layout layout) {
    Inserts inserts = layout.wall().inserts();
    double needed = inserts.body().flange() + layout.wall().clearance().flange().toFlange();
    double asked = inserts.pattern().scattering().least();
    if (inserts.pattern().kind() != Pattern.Kind.SCATTER || Tolerance.atLeast(asked, needed)) {
      return Optional.empty();
    }
    Tape tape = layout.wall().tape();
    return Optional.of(
        new WholeWall(name(), Severity.WARNING)
            .finding(
                "",
                "",
                new Measure(asked, needed),
                "inserts are scattered as near as "
                    + tape.size(asked)
                    + ", and their flanges with what must remain between them take "
                    + tape.size(needed)
                    + ": those that come nearer are left out or refused",
                "scatter them at least as far apart as that "
                    + Cure.length("[inserts] scatter-spacing", needed, tape).words()));
  }

  private static void addFindings(
      List<Insert> inserts, InsertSurroundings around, Report report, List<Finding> findings) {
    List<Integer> numbers = IntStream.range(0, inserts.size()).boxed().toList();
    SpatialIndex<Integer> index = new SpatialIndex<>(numbers, number -> box(inserts.get(number)));
    for (int number : numbers) {
      Insert insert = inserts.get(number);
      for (int next : index.near(box(insert), around.reach())) {
        Measure measure = around.between(insert.centre(), inserts.get(next).centre());
        if (next > number && InsertSurroundings.fallsShort(measure)) {
          findings.add(finding(insert, inserts.get(next), measure, report));
        }
      }
    }
  }

  private static Envelope box(Insert insert) {
    return insert.centre().getEnvelopeInternal();
  }

  private static Finding finding(Insert insert, Insert other, Measure measure, Report report) {
    double needed = insert.centre().distance(other.centre()) + measure.shortfall();
    return report.error(
        new Report.Thing(other.mark(), other.centre()),
        insert.mark(),
        measure,
        "the flange of insert "
            + other.mark()
            + " "
            + report.standing(measure, "that of " + insert.mark()),
        InsertMove.clearOf(insert.centre(), other, needed).words(other, report.tape()));
  }
}
