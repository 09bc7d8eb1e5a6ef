package plycrag.check.standing;

import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.support.SupportPart;
import plycrag.wall.room.Supports;

/**
 * Writes what is found of one part of a support, under the keys that tell that part.
 *
 * @param rule that finds
 * @param facet the lowest that the part holds
 * @param table that tells how, as a file has its header
 * @param stands whether that facet is the lowest of its run, so that posts could hold the part
 */
record PartReport(String rule, String facet, String table, boolean stands) {
  static PartReport of(String rule, Layout layout, SupportPart part) {
    String facet = part.facets().get(0);
    String lowest = layout.runs().get(part.run()).get(0).facet().name();
    String table = layout.wall().supports().table(facet);
    return new PartReport(rule, facet, table, lowest.equals(facet));
  }

  /** A key with its table. */
  String key(String name) {
    return table + " " + name;
  }

  /** A key with a word that it takes, in brackets. */
  String cure(String name, String word) {
    return Cure.word(key(name), word).words();
  }

  /** The key that lets it stand on posts, with its value where that alone is enough. */
  String onPosts() {
    return stands ? cure("kind", "freestanding") : "(" + key("kind") + ")";
  }

  /** What names its facet by itself. */
  Finding plain(Severity severity, String sentence, String suggestion) {
    return new WholeWall(rule, severity).finding(sentence, suggestion);
  }

  /** The facet whose own support it is, is named: its keys stand in that facet's table. */
  Finding named(Severity severity, String sentence, String suggestion) {
    String told = Supports.isOwn(table) ? "for facet " + facet + ", " + sentence : sentence;
    return plain(severity, told, suggestion);
  }
}
