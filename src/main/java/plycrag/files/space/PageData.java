package plycrag.files.space;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import plycrag.document.WallPage;
import plycrag.document.WallPage.Fact;
import plycrag.document.WallPage.Part;
import plycrag.document.WallPage.Remark;
import plycrag.files.gltf.GltfAxes;
import plycrag.files.json.JsonText;

/** What a page tells, for its script. */
public final class PageData {
  private PageData() {}

  /** An object in JSON; places are glTF's, in metres. */
  public static String json(WallPage page) {
    return JsonText.object(json -> write(json, page));
  }

  private static void write(JsonGenerator json, WallPage page) throws IOException {
    json.writeStringField("title", page.title());
    json.writeStringField("stamp", page.stamp());
    json.writeArrayFieldStart("figures");
    for (Fact fact : page.figures()) {
      strings(json, List.of(fact.name(), fact.value()));
    }
    json.writeEndArray();
    json.writeFieldName("steps");
    strings(json, page.steps());
    json.writeObjectFieldStart("parts");
    for (Part part : page.parts()) {
      part(json, part);
    }
    json.writeEndObject();
    json.writeArrayFieldStart("remarks");
    for (Remark remark : page.remarks()) {
      remark(json, remark);
    }
    json.writeEndArray();
  }

  private static void part(JsonGenerator json, Part part) throws IOException {
    json.writeArrayFieldStart(part.mark());
    json.writeString(part.what());
    json.writeString(part.list());
    json.writeNumber(part.step());
    json.writeEndArray();
  }

  private static void remark(JsonGenerator json, Remark remark) throws IOException {
    json.writeStartObject();
    json.writeStringField("severity", remark.severity());
    json.writeStringField("sentence", remark.sentence());
    json.writeStringField("suggestion", remark.suggestion());
    json.writeFieldName("marks");
    strings(json, remark.marks());
    if (remark.place().isPresent()) {
      double[] metres = GltfAxes.metres(remark.place().get());
      json.writeFieldName("place");
      json.writeArray(metres, 0, metres.length);
    }
    json.writeEndObject();
  }

  private static void strings(JsonGenerator json, List<String> values) throws IOException {
    json.writeStartArray();
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }
}
