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
import plycrag.wall.GivenZone.Points;
import plycrag.wall.Pattern;
import plycrag.wall.Wall;
import plycrag.wall.Zone;

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
    Wall wall = layout.wall();
    Pattern facets = wall.inserts().pattern();
    tooDense(facets, "inserts", "[inserts]", wall).ifPresent(findings::add);
    for (Zone zone : wall.face().zones()) {
      if (zone.points() == Points.INSERTS && !isScattered(zone.pattern(), facets)) {
        tooDense(zone.pattern(), "inserts of zone " + zone.name(), "[[zone]]", wall)
            .ifPresent(findings::add);
      }
    }
    for (FacetLayout facet : layout.facets()) {
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      InsertSurroundings around = facet.surroundings();
      addFindings(facet.inserts(), around, report, findings);
    }
    return findings;
  }

  /** Whether a zone's inserts are scattered just as those of the facets, which are told of. */
  private static boolean isScattered(Pattern zone, Pattern facets) {
    return facets.kind() == Pattern.Kind.SCATTER
        && zone.scattering().least() == facets.scattering().least();
  }

  /** Whether inserts are scattered nearer to each other than their flanges let them. */
  private Optional<Finding> tooDense(Pattern pattern, String what, String table, Wall wall) {
    double needed = wall.inserts().body().flange() + wall.clearance().flange().toFlange();
    double asked = pattern.scattering().least();
    if (pattern.kind() != Pattern.Kind.SCATTER || Tolerance.atLeast(asked, needed)) {
      return Optional.empty();
    }
    Tape tape = wall.tape();
    return Optional.of(
        new WholeWall(name(), Severity.WARNING)
            .finding(
                "",
                "",
                new Measure(asked, needed),
                what
                    + " are scattered as near as "
                    + tape.size(asked)
                    + ", and their flanges with what must remain between them take "
                    + tape.size(needed)
                    + ": those that come nearer are left out or refused",
                "scatter them at least as far apart as that "
                    + Cure.length(table + " scatter-spacing", needed, tape).words()));
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
