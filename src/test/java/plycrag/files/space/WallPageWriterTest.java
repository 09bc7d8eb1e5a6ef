package plycrag.files.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plycrag.document.WallPage;
import plycrag.document.WallPage.Fact;
import plycrag.document.WallPage.Part;
import plycrag.document.WallPage.Remark;
import plycrag.document.Xyz;

class WallPageWriterTest {
  private static final byte[] MODEL = {1, 2, 3, -4};

  private static WallPage page(String title) {
    return new WallPage(
        title,
        "",
        "Over mats.",
        List.of(new Fact("to buy", "2 sheets")),
        List.of(new Part("ST1", "stud", "lists/cut-list.csv", 1)),
        List.of("Join the frame."),
        List.of(
            new Remark(
                "warning", "too near", "", List.of("ST1"), Optional.of(new Xyz(1000, 2, 3000)))));
  }

  private static String between(String page, String start, String end) {
    int from = page.indexOf(start) + start.length();
    return page.substring(from, page.indexOf(end, from));
  }

  @Test
  void carriesTheModelAsItIs() {
    String page = WallPageWriter.write(page("Bay"), MODEL);
    String carried = between(page, "id=\"model\">", "</script>");
    assertThat(Base64.getDecoder().decode(carried)).isEqualTo(MODEL);
  }

  @Test
  void asksForNothingUnlessItIsLive() {
    String page = WallPageWriter.write(page("Bay"), MODEL);
    assertThat(page).contains("default-src 'none'").doesNotContain("connect-src");
    assertThat(page).doesNotContainPattern("(src|href)=\"(?!data:)").contains("data-revision=\"\"");
    assertThat(WallPageWriter.writeLive(page("Bay"), MODEL, 7))
        .contains("connect-src 'self'", "data-revision=\"7\"");
  }

  @Test
  void itsModulesImportEachOtherByNamesAlone() {
    String map = between(WallPageWriter.write(page("Bay"), MODEL), "importmap\">", "</script>");
    List<String> modules =
        Pattern.compile("base64,([^\"]+)")
            .matcher(map)
            .results()
            .map(found -> found.group(1))
            .map(text -> new String(Base64.getDecoder().decode(text), StandardCharsets.UTF_8))
            .toList();
    assertThat(modules).hasSize(4);
    List<String> imported =
        modules.stream()
            .flatMap(module -> Pattern.compile("} from '([^']+)'").matcher(module).results())
            .map(found -> found.group(1))
            .distinct()
            .toList();
    assertThat(imported).contains("three");
    imported.forEach(name -> assertThat(map.contains("\"" + name + "\": ")).as(name).isTrue());
  }

  @Test
  void aNameEndsNoScript() throws IOException {
    String page = WallPageWriter.write(page("</script><b>&\""), MODEL);
    assertThat(page).doesNotContain("</script><b>");
    String json = between(page, "id=\"wall\">", "</script>");
    List<String> texts = new ArrayList<>();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      while (parser.nextToken() != null) {
        texts.add(parser.getText());
      }
    }
    assertThat(texts).contains("</script><b>&\"");
  }

  /** x to the right, y up and z toward the viewer, in metres. */
  @Test
  void placesAreThoseOfTheModel() {
    assertThat(PageData.json(page("Bay"))).contains("\"place\":[1.0,3.0,0.002]");
  }

  @Test
  void aPartComesInAStepThatThereIs() {
    List<Part> parts = List.of(new Part("ST1", "stud", "", 1));
    assertThatThrownBy(() -> new WallPage("Bay", "", "", List.of(), parts, List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
