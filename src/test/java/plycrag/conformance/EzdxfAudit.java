package plycrag.conformance;

import java.nio.file.Path;
import java.util.List;
import plycrag.files.lint.DxfTags;

/** What ezdxf makes of a DXF file; the words are those of version 0.18.1. */
public final class EzdxfAudit {
  private static final String CLEAN = "No errors found.";

  private static final String CIRCLES =
      """
      import sys, ezdxf
      for circle in ezdxf.readfile(sys.argv[1]).modelspace().query("CIRCLE"):
          c = circle.dxf
          print(c.layer, c.center.x, c.center.y, c.radius)
      """;

  private EzdxfAudit() {}

  /** What is wrong, in the auditor's words; empty if it found and mended nothing. */
  public static String complaints(Path file) {
    Tools.Result result = Tools.run(Tools.PYTHON, "-m", "ezdxf", "audit", absolute(file));
    List<String> lines =
        result.output().lines().filter(line -> !line.startsWith("auditing file")).toList();
    boolean clean = result.exit() == 0 && lines.equals(List.of(CLEAN));
    return clean ? "" : result.toString();
  }

  /** The circles of the model, as ezdxf reads them. */
  public static List<DxfTags.Circle> circles(Path file) {
    return Tools.output(Tools.PYTHON, "-c", CIRCLES, absolute(file))
        .lines()
        .map(line -> line.split(" ", -1))
        .map(words -> new DxfTags.Circle(words[0], at(words[1]), at(words[2]), at(words[3])))
        .toList();
  }

  private static double at(String number) {
    return Double.parseDouble(number);
  }

  private static String absolute(Path file) {
    return file.toAbsolutePath().toString();
  }
}
