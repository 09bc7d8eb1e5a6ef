package plycrag.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Findings that are equal but for the parts that they name: one line for a person, who sees how
 * often and where first.
 *
 * @param findings one or more, in their order
 */
public record FindingGroup(List<Finding> findings) {
  /** More places than this are counted rather than named. */
  private static final int NAMED = 3;

  /** What parts are marked with: two letters of a member or hardware, else one. */
  private static final Pattern MARK =
      Pattern.compile(
          "\\b(?:PL|RK|ST|TR|HD|BL|PO|TI|RA|HE|SL|BC|KB|BM|LG|HA"
              + "|BR|SP|HN|BT|SC|GU|AN|TE|LK|A|J|P|S|T)[0-9]+\\b");

  /** Copies the list and rejects an empty one. */
  public FindingGroup {
    findings = List.copyOf(findings);
    if (findings.isEmpty()) {
      throw new IllegalArgumentException("a group has a finding");
    }
  }

  /** What equal findings share. */
  private record Alike(String rule, Severity severity, String sentence, String suggestion) {
    static Alike of(Finding finding) {
      return new Alike(
          finding.rule(),
          finding.severity(),
          unmarked(finding.sentence(), finding),
          unmarked(finding.suggestion(), finding));
    }

    private static String unmarked(String words, Finding finding) {
      String rest = without(without(words, finding.first(), "#1"), finding.second(), "#2");
      return MARK.matcher(without(rest, facet(finding), "#3")).replaceAll("#");
    }

    /** The words with a mark as a word of its own replaced. */
    private static String without(String words, String mark, String other) {
      return mark.isEmpty()
          ? words
          : words.replaceAll(
              "(?<![\\w/])" + Pattern.quote(mark) + "(?![\\w/])", Matcher.quoteReplacement(other));
    }
  }

  /** Equal findings together, each group where its first one stands. */
  public static List<FindingGroup> of(List<Finding> findings) {
    Map<Alike, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      groups.computeIfAbsent(Alike.of(finding), unseen -> new ArrayList<>()).add(finding);
    }
    return groups.values().stream().map(FindingGroup::new).toList();
  }

  /** The first of them, which stands for all. */
  public Finding first() {
    return findings.get(0);
  }

  /**
   * What is wrong and, of several, how often and where first: {@code … has no timber behind it (5
   * times: P6, P7, P8 and 2 more)}.
   */
  public String sentence() {
    return findings.size() == 1
        ? first().sentence()
        : first().sentence() + " (" + findings.size() + " times" + places() + ")";
  }

  /** The facets that they are on, in the order of the findings; none where they are on none. */
  public List<String> facets() {
    return told(FindingGroup::facet);
  }

  private String places() {
    List<String> places = told(FindingGroup::place);
    if (places.size() <= 1) {
      return "";
    }
    Stream<String> named = places.stream().limit(NAMED);
    int more = places.size() - NAMED;
    return ": " + String.join(", ", named.toList()) + (more > 0 ? " and " + more + " more" : "");
  }

  private List<String> told(Function<Finding, String> what) {
    return findings.stream().map(what).filter(one -> !one.isEmpty()).distinct().toList();
  }

  /** The mark of the thing judged, which is where it is; else the facet. */
  private static String place(Finding finding) {
    return finding.first().isEmpty() ? facet(finding) : finding.first();
  }

  private static String facet(Finding finding) {
    return finding.place() instanceof Place.OnFacet place ? place.facet() : "";
  }
}
