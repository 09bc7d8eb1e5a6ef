package plycrag.files.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;

/** Undoes the compression of all streams below an object. */
final class RawStreams {
  private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());

  private RawStreams() {}

  static void in(COSBase root) throws IOException {
    new RawStreams().visit(root);
  }

  private void visit(COSBase base) throws IOException {
    COSBase object = base instanceof COSObject reference ? reference.getObject() : base;
    if (object == null || !seen.add(object)) {
      return;
    }
    if (object instanceof COSStream stream) {
      unpack(stream);
    }
    if (object instanceof COSDictionary dictionary) {
      for (COSBase value : dictionary.getValues()) {
        visit(value);
      }
    } else if (object instanceof COSArray array) {
      for (COSBase value : array) {
        visit(value);
      }
    }
  }

  private static void unpack(COSStream stream) throws IOException {
    if (stream.containsKey(COSName.FILTER)) {
      byte[] content;
      try (var in = stream.createInputStream()) {
        content = in.readAllBytes();
      }
      stream.removeItem(COSName.FILTER);
      try (OutputStream out = stream.createOutputStream()) {
        out.write(content);
      }
    }
  }
}
