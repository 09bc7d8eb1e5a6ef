package plycrag.check.rule;

import java.util.Optional;
import org.locationtech.jts.geom.Point;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.units.Tape;

/**
 * Writes the findings of one rule on one facet.
 *
 * @param rule the rule's name
 * @param facet the facet's name
 * @param tape what lengths are told with
 */
public record Report(String rule, String facet, Tape tape) {

  /**
   * Two things too near to each other.
   *
   * @param first the thing judged and where it is
   * @param second the mark of what stands in its way
   * @param sentence how the first stands to the second, without the measure
   */
  public Finding error(
      Thing first, String second, Measure measure, String sentence, String suggestion) {
    return finding(Severity.ERROR, first, second, measure, sentence, suggestion);
  }

  /** The same where the wall can be made, and wants a decision. */
  public Finding warning(
      Thing first, String second, Measure measure, String sentence, String suggestion) {
    return finding(Severity.WARNING, first, second, measure, sentence, suggestion);
  }

  private Finding finding(
      Severity severity,
      Thing first,
      String second,
      Measure measure,
      String sentence,
      String suggestion) {
    Place place = new Place.OnFacet(facet, first.place().getX(), first.place().getY());
    return new Finding(
        rule,
        severity,
        place,
        first.mark(),
        second,
        Optional.of(measure),
        sentence + requirement(measure),
        suggestion);
  }

  /** Something marked, and where it is. */
  public record Thing(String mark, Point place) {}

  /** A distance in words: {@code overlaps X by 8 mm}, {@code is 2 mm from X}. */
  public String standing(Measure measure, String other) {
    return measure.standing(other, tape);
  }

  private String requirement(Measure measure) {
    return measure.required() > 0 ? "; " + tape.size(measure.required()) + " must remain" : "";
  }
}
