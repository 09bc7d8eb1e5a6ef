package plycrag.files.svg;

import java.util.stream.Collectors;
import plycrag.document.Fill;
import plycrag.document.Ink;
import plycrag.document.Layer;
import plycrag.document.Pen;

/** Attributes. */
final class SvgStyle {
  private static final String PAPER = "#fff";
  private static final String TIMBER = "#f3e3c3";
  private static final String ADDED = "#fbe3dd";
  private static final String ADDED_SHADE = "#f3c3b6";

  private SvgStyle() {}

  /** What all lines of a layer share. */
  static String lines(Layer layer) {
    Pen pen = layer.pen();
    return attribute("class", layer.name())
        + attribute("stroke", colour(pen.ink()))
        + attribute("stroke-width", PaperAxes.number(pen.width()))
        + dashes(pen);
  }

  /** What all texts of a layer share. */
  static String text(Layer layer) {
    return attribute("class", layer.name()) + attribute("fill", colour(layer.pen().ink()));
  }

  /** What fills an area; nothing unless said. */
  static String fill(Fill fill, Layer layer) {
    return switch (fill) {
      case NONE -> "";
      case PAPER -> attribute("fill", PAPER);
      case TIMBER -> attribute("fill", TIMBER);
      case ADDED -> attribute("fill", ADDED);
      case ADDED_SHADE -> attribute("fill", ADDED_SHADE);
      case INK -> attribute("fill", colour(layer.pen().ink()));
    };
  }

  /** An attribute with the space before it. */
  static String attribute(String name, String value) {
    return " " + name + "=\"" + XmlText.of(value) + "\"";
  }

  private static String dashes(Pen pen) {
    String lengths =
        pen.dash().pattern().stream().map(PaperAxes::number).collect(Collectors.joining(" "));
    return lengths.isEmpty() ? "" : attribute("stroke-dasharray", lengths);
  }

  private static String colour(Ink ink) {
    return switch (ink) {
      case BLACK -> "#000";
      case GREY -> "#777";
      case VERMILION -> "#d9381e";
    };
  }
}
