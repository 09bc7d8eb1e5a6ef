package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.TestFiles;
import plycrag.files.lint.SvgLint;

/** One picture of a wall. */
class ViewCommandTest {
  /** Common practice, no source: a column on a stud, and a ceiling that is too low. */
  private static final String REFUSED =
      """
      [wall]
      width = 1800
      [[facet]]
      angle = 20
      length = 1800
      [inserts]
      when-blocked = "report"
      [room]
      ceiling = 1500
      [mat]
      thickness = 300
      """;

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return new Plycrag(new PrintWriter(out, true), new PrintWriter(err, true)).run(arguments);
  }

  private Path file(String toml) throws IOException {
    return Files.writeString(folder.resolve("slipway.toml"), toml);
  }

  @Test
  void aRefusedWallIsShownWithItsFindingsByNumber() throws IOException {
    assertThat(run("view", file(REFUSED).toString())).isEqualTo(1);
    String svg = TestFiles.read(folder.resolve("slipway.svg"));
    assertThat(SvgLint.faults(svg)).isEmpty();
    assertThat(svg)
        .contains("NOT FOR MAKING", "Ringed: what was found", "ceiling 1500 mm", "1800 mm wide");
    assertThat(err.toString()).startsWith("1. ").contains("\n4. ", "room-fits");
    assertThat(svg).contains(">1</text>", ">3</text>").doesNotContain(">4</text>");
    assertThat(out.toString()).contains("Drew ", "Not for making");
  }

  /** Nine by nine; from above, mats as thick as the lowest two rows are high hide those. */
  @Test
  void holesAreThereWhereNothingStandsBeforeThem() throws IOException {
    String clear = REFUSED.replace("ceiling = 1500", "ceiling = 3000");
    assertThat(holes(clear)).isEqualTo(81 - 2 * 9);
    assertThat(holes(clear.replace("[mat]\nthickness = 300\n", ""))).isEqualTo(81);
  }

  private long holes(String toml) throws IOException {
    run("view", file(toml).toString());
    String svg = TestFiles.read(folder.resolve("slipway.svg"));
    return svg.lines()
        .filter(line -> line.startsWith("<polygon") || line.startsWith("<path"))
        .count();
  }

  @Test
  void aPictureOfDotsShowsTheSame() throws IOException {
    Path picture = folder.resolve("loft.png");
    run("view", file(REFUSED).toString(), "-o", picture.toString(), "-q");
    BufferedImage image = ImageIO.read(picture.toFile());
    assertThat(image.getWidth()).isGreaterThan(800);
    int red = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        int rgb = image.getRGB(x, y);
        red += (rgb >> 16 & 255) > (rgb & 255) + 100 ? 1 : 0;
      }
    }
    assertThat(red).as("dots of the stamp and the rings").isGreaterThan(1000);
    assertThat(out.toString()).isEmpty();
    assertThat(folder.resolve("slipway.svg")).doesNotExist();
  }

  @Test
  void tellsWhereNoPictureCanBeMade() throws IOException {
    String file = file(REFUSED).toString();
    assertThat(run("view", file, "-o", "loft.jpeg")).isEqualTo(2);
    assertThat(err.toString()).contains("loft.jpeg ends in neither .svg nor .png");
    assertThat(run("view", file, file, "-o", "loft.svg")).isEqualTo(2);
    assertThat(run("view", file, "-o", folder.resolve("none/loft.svg").toString())).isEqualTo(3);
    assertThat(err.toString()).contains("loft.svg: there is no such folder");
  }
}
