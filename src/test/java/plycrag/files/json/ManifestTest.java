package plycrag.files.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ManifestTest {
  private static final String SHA = "0123456789abcdef".repeat(4);
  private static final Manifest MANIFEST =
      new Manifest(
          new Manifest.Origin(
              "0.1.0",
              new Manifest.Input("boat \"house\" é.toml", SHA),
              Optional.empty(),
              Optional.empty(),
              Optional.empty()),
          List.of(
              new Manifest.Entry("lists/holes.csv", 1234567890123L, SHA),
              new Manifest.Entry("index.html", 0, SHA)));

  @Test
  void filesAreSortedOneALine() {
    assertThat(ManifestWriter.write(MANIFEST))
        .isEqualTo(
            """
            {"program":"plycrag","version":"0.1.0",\
            "parameters":{"file":"boat \\"house\\" é.toml","sha256":"SHA"},"files":[
            {"path":"index.html","size":0,"sha256":"SHA"},
            {"path":"lists/holes.csv","size":1234567890123,"sha256":"SHA"}
            ]}
            """
                .replace("SHA", SHA));
  }

  @Test
  void readerGivesBackWhatWasWritten() {
    assertThat(read(ManifestWriter.write(MANIFEST))).contains(MANIFEST);
  }

  @Test
  void keysOfLaterVersionsArePassedOver() {
    String later =
        ManifestWriter.write(MANIFEST)
            .replace("\"version\"", "\"later\":[1.5,null,{\"a\":[true]}],\"version\"");

    assertThat(read(later)).contains(MANIFEST);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "[]",
        "{}",
        "{\"program\":\"plycrag\"}",
        "{\"program\":\"plycrag\",\"version\":\"1\",\"files\":[]}",
        "not json",
        "\u0000\u0000",
        "[[[[[[["
      })
  void anythingElseIsNoManifest(String text) {
    assertThat(read(text)).isEmpty();
  }

  @Test
  void aBrokenManifestIsNone() {
    String text = ManifestWriter.write(MANIFEST);

    assertThat(read(text.substring(0, text.length() / 2))).isEmpty();
    assertThat(read(text + "{}")).isEmpty();
    assertThat(read(text.replace("plycrag", "another"))).isEmpty();
    assertThat(read(text.replace(":0,", ":\"0\","))).isEmpty();
    assertThat(read(text.replace(":0,", ":-1,"))).isEmpty();
    assertThat(read(text.replace(":0,", ":99999999999999999999,"))).isEmpty();
    assertThat(read(text.replace(SHA, "x"))).isEmpty();
    assertThat(read(text.replace("{\"path\"", "{\"path\":\"twice\",\"path\""))).isEmpty();
    assertThat(read("[".repeat(100_000))).isEmpty();
  }

  @Test
  void thePriceListStandsBesideTheParameterFile() {
    Manifest.Input prices = new Manifest.Input("prices.csv", SHA.replace('0', 'a'));
    Manifest.Origin origin =
        new Manifest.Origin(
            "0.1.0",
            MANIFEST.origin().parameters(),
            Optional.of(prices),
            Optional.empty(),
            Optional.empty());
    Manifest priced = new Manifest(origin, MANIFEST.files());
    String text = ManifestWriter.write(priced);
    assertThat(text).contains("},\"prices\":{\"file\":\"prices.csv\",\"sha256\":\"a123");
    assertThat(read(text)).contains(priced);
    assertThat(read(text.replace("prices.csv", "x/prices.csv"))).isEmpty();
  }

  @Test
  void aPathOfTheMachineIsRejected() {
    assertThatThrownBy(() -> new Manifest.Input("home/boathouse.toml", SHA))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Manifest.Input("C:\\boathouse.toml", SHA))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Optional<Manifest> read(String text) {
    return ManifestReader.read(text.getBytes(StandardCharsets.UTF_8));
  }
}
