package plycrag.layout.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.Layout;
import plycrag.layout.frame.MemberRole;
import plycrag.wall.room.GivenSupport.Kind;

/** Facets and runs that are held by something of their own. */
class FacetSupportTest {
  private static final String FEW = "[inserts]\npitch-across = 600\npitch-up = 600\n";

  private static final String JOISTS =
      """
      [room]
      ceiling = 3200
      ceiling-members = "joists"
      joist-section = [45, 195]
      joist-span = 3600
      left = 600
      right = 600
      """;

  private static final String FACE =
      """
      [wall]
      width = 2400
      [[facet]]
      name = "face"
      angle = 15
      length = 2000
      """;

  private static final String ROOF =
      """
      [[facet]]
      name = "roof"
      angle = 80
      length = 1200
      """;

  private static final String FIXED =
      "[support]\nkind = \"fixed\"\nfixed-to = \"concrete\"\nbehind = 600\n";

  private static List<MemberRole> roles(SupportPart part) {
    return part.members().stream().map(one -> one.member().role()).distinct().toList();
  }

  private static List<String> sentences(String toml) {
    return told(toml, Finding::sentence);
  }

  private static List<String> suggestions(String toml) {
    return told(toml, Finding::suggestion);
  }

  private static List<String> told(String toml, Function<Finding, String> words) {
    return Inspection.of(Walls.laidOut(toml)).findings().stream()
        .filter(one -> one.rule().equals("support-holds"))
        .map(words)
        .toList();
  }

  private static List<SupportPart> parts(String toml) {
    return Walls.laidOut(toml).support().orElseThrow().parts();
  }

  /** A roof that nothing level could hold hangs from joists, over a wall that is fixed. */
  @Test
  void aRoofHangsOverAWallThatIsFixed() {
    String toml = FACE + ROOF + "[facet.support]\nkind = \"hung\"\n" + FEW + FIXED + JOISTS;
    List<SupportPart> parts = parts(toml);
    assertThat(parts)
        .extracting(SupportPart::facets)
        .containsExactly(List.of("face"), List.of("roof"));
    assertThat(roles(parts.get(0))).containsExactly(MemberRole.LEDGER, MemberRole.TIE);
    assertThat(roles(parts.get(1))).containsExactly(MemberRole.LEDGER, MemberRole.HANGER);
    assertThat(parts.get(0).buildingFace()).isPresent();
    assertThat(parts.get(1).buildingFace()).isEmpty();
    assertThat(sentences(toml)).isEmpty();
    assertThat(sentences(FACE + ROOF + FEW + FIXED + JOISTS))
        .containsExactly(
            "the upper edge of facet roof is held by nothing: it leans out by 80°, and what comes"
                + " level from behind ends on nothing that leans further than 60°");
  }

  /** What is left out is as the wall's support has it; what is told holds instead. */
  @Test
  void aKeyThatIsLeftOutIsAsTheWallHasIt() {
    String own = "[facet.support]\nkind = \"hung\"\ntie-depth = 70\n";
    List<SupportPart> parts =
        parts(FACE + ROOF + own + FEW + FIXED + "bay = 900\nledger-section = [45, 140]\n" + JOISTS);
    assertThat(parts.get(1).asked().bay()).isEqualTo(900);
    assertThat(parts.get(1).asked().timber().ledger().depth()).isEqualTo(140);
    assertThat(parts.get(1).asked().timber().tie()).isEqualTo(70);
    assertThat(parts.get(0).asked().timber().tie()).isEqualTo(90);
  }

  /** Marks count over all parts, and the frame of the run on posts alone stands on rails. */
  @Test
  void aWallOnPostsBesideOneThatIsFixed() {
    String beside =
        """
        [[facet]]
        name = "wing"
        beside = "face"
        turn = 60
        angle = 10
        length = 2000
        width = 1800
        [facet.support]
        kind = "freestanding"
        behind = 700
        """;
    Layout layout = Walls.laidOut(FACE + beside + FEW + FIXED);
    List<SupportPart> parts = layout.support().orElseThrow().parts();
    assertThat(parts)
        .extracting(part -> part.asked().kind())
        .containsExactly(Kind.FIXED, Kind.FREESTANDING);
    assertThat(parts).extracting(SupportPart::run).containsExactly(0, 1);
    assertThat(layout.standing()).extracting(one -> one.member().mark()).doesNotHaveDuplicates();
    assertThat(layout.joints()).extracting(joint -> joint.mark()).doesNotHaveDuplicates();
    assertThat(layout.wall().facets())
        .extracting(facet -> layout.wall().base(facet))
        .containsExactly(0.0, 140.0);
    assertThat(parts.get(1).members().stream().map(PlacedMember::run).collect(Collectors.toSet()))
        .containsExactly(1);
  }

  /** Facets that are told the same, one after the other, are held as one. */
  @Test
  void neighboursThatAreHeldAlikeAreHeldTogether() {
    String kick = "[[facet]]\nname = \"kick\"\nlength = 400\n";
    String free = "[facet.support]\nkind = \"freestanding\"\nbehind = 900\n";
    String upper = "[[facet]]\nname = \"upper\"\nangle = 20\nlength = 1800\n";
    String wall = "[wall]\nwidth = 2400\n";
    assertThat(parts(wall + kick + free + upper + free + FEW)).hasSize(1);
    assertThat(parts(wall + kick + upper + FEW + free.replace("facet.", ""))).hasSize(1);
    assertThat(sentences(wall + kick + free + upper + FEW))
        .contains("nothing is told that holds facet upper, and other facets have a support");
  }

  /** How far the building is behind a wall that lies flat on it says nothing of what hangs. */
  @Test
  void aRoofHangsOverAWallThatLiesFlat() {
    String toml =
        FACE.replace("angle = 15", "angle = 0")
            + ROOF
            + "[facet.support]\nkind = \"hung\"\n"
            + FEW
            + FIXED.replace("behind = 600", "behind = 0")
            + JOISTS;
    assertThat(sentences(toml)).isEmpty();
    assertThat(roles(parts(toml).get(1))).containsExactly(MemberRole.LEDGER, MemberRole.HANGER);
  }

  /** Whose own support it is stands in the sentence; posts are no cure above another support. */
  @Test
  void aFindingOfAnOwnSupportNamesItsFacet() {
    String toml =
        FACE
            + ROOF
            + "[facet.support]\nkind = \"hung\"\n"
            + FEW
            + FIXED
            + JOISTS
            + "no-drill = true\n";
    Found.by("support-holds", toml)
        .times(2)
        .says("nothing may be fixed to the building, and this support is")
        .suggests("let it stand free ([support] kind = \"freestanding\")");
    assertThat(sentences(toml))
        .contains("for facet roof, nothing may be fixed to the building, and this support is");
    assertThat(suggestions(toml)).contains("let it stand free ([facet.support] kind)");
  }

  /** What moves stiffens no posts, nor do knees find room where these are braced from behind. */
  @Test
  void postsOfAHingedWallWantBraces() {
    String hinged =
        "[wall]\nwidth = 2400\nraise = 140\nfold-edges = \"square\"\n"
            + "[[facet]]\nname = \"kick\"\nlength = 320\n"
            + "[[facet]]\nname = \"main\"\nangle = 25\nlength = 2000\n"
            + FEW
            + "[support]\nkind = \"hinged\"\nfixed-to = \"posts\"\nlateral = ";
    assertThat(sentences(hinged + "\"braces\"\n")).isEmpty();
    assertThat(sentences(hinged + "\"sheets\"\n"))
        .containsExactly("sheets that swing keep no posts from swaying along the wall");
    assertThat(sentences(hinged + "\"knee-braces\"\n"))
        .containsExactly(
            "knee braces find no place on the posts of a hinged wall, which are braced from"
                + " behind");
  }

  @Test
  void postsAndHingesHoldAllFromTheFloorUp() {
    String free = "[facet.support]\nkind = \"freestanding\"\n";
    assertThat(sentences(FACE + ROOF + free + FEW + FIXED))
        .containsExactly(
            "facet roof stands on a facet that is held another way, and a support on posts holds"
                + " all from the floor up");
    assertThat(parts(FACE + ROOF + free + FEW + FIXED).get(1).members()).isEmpty();
  }
}
