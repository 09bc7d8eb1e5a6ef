package plycrag.files.space;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** The scripts of a page, inside the page itself. */
final class PageScripts {
  private static final String THREE = "/META-INF/resources/webjars/three/0.164.1/";
  private static final String ADDONS = "three/addons/";

  /** A module by the name that others import it by, and where the library keeps it. */
  private static final Map<String, String> MODULES = modules();

  private PageScripts() {}

  private static Map<String, String> modules() {
    Map<String, String> modules = new LinkedHashMap<>();
    modules.put("three", "build/three.module.min.js");
    for (String addon :
        new String[] {
          "controls/OrbitControls.js", "loaders/GLTFLoader.js", "utils/BufferGeometryUtils.js"
        }) {
      modules.put(ADDONS + addon, "examples/jsm/" + addon);
    }
    return modules;
  }

  /** An import map in which each module is an address of its own text. */
  static String importMap() {
    return MODULES.entrySet().stream()
        .map(one -> "\"" + one.getKey() + "\": \"" + address(text(THREE + one.getValue())) + "\"")
        .collect(Collectors.joining(",\n", "{\"imports\": {\n", "\n}}"));
  }

  private static String address(String module) {
    String alone = module.replace("'../utils/", "'" + ADDONS + "utils/");
    return "data:text/javascript;base64,"
        + Base64.getEncoder().encodeToString(alone.getBytes(StandardCharsets.UTF_8));
  }

  /** A text of ours. */
  static String own(String name) {
    return text("/plycrag/page/" + name);
  }

  private static String text(String resource) {
    try (InputStream in = PageScripts.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + resource);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
