package plycrag.files.json;

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
              json.writeObjectFieldStart("parameters");
              json.writeStringField("file", manifest.origin().parameterFile());
              json.writeStringField("sha256", manifest.origin().sha256());
              json.writeEndObject();
              json.writeFieldName("files");
              json.writeRawValue(files);
            })
        + "\n";
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
