package plycrag.files.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** Writes a manifest. */
public final class ManifestWriter {
  static final String PROGRAM = "plycrag";

  private ManifestWriter() {}

  /** The text of the file. */
  public static String write(Manifest manifest) {
    String files = JsonText.lines(manifest.files().stream().map(ManifestWriter::entry));
    return JsonText.object(
            json -> {
              json.writeStringField("program", PROGRAM);
              json.writeStringField("version", manifest.origin().version());
              writeInput(json, "parameters", manifest.origin().parameters());
              if (manifest.origin().prices().isPresent()) {
                writeInput(json, "prices", manifest.origin().prices().get());
              }
              if (manifest.origin().positions().isPresent()) {
                writeInput(json, "positions", manifest.origin().positions().get());
              }
              if (manifest.origin().catalogue().isPresent()) {
                writeInput(json, "catalogue", manifest.origin().catalogue().get());
              }
              json.writeFieldName("files");
              json.writeRawValue(files);
            })
        + "\n";
  }

  private static void writeInput(JsonGenerator json, String name, Manifest.Input input)
      throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("file", input.file());
    json.writeStringField("sha256", input.sha256());
    json.writeEndObject();
  }

  private static String entry(Manifest.Entry entry) {
    return JsonText.object(
        json -> {
          json.writeStringField("path", entry.path());
          json.writeNumberField("size", entry.size());
          json.writeStringField("sha256", entry.sha256());
        });
  }
}
