package plycrag.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.stream.Collectors;
import plycrag.app.watch.PageServer;
import plycrag.app.watch.Showing;
import plycrag.book.WallInSpace;
import plycrag.document.WallPage;
import plycrag.drawing.room.WallModel;
import plycrag.files.gltf.SceneWriter;
import plycrag.finding.FindingLine;

/** Looks whether a file, or a list that it names, was saved, and shows what comes of it. */
final class Watching {
  /** How often files are looked at, ms: a page changes within a second of a save. */
  private static final long EVERY = 150;

  private final Source source;
  private final PageServer server;
  private final Terminal terminal;
  private List<Path> files;
  private String seen = "";

  Watching(Source source, PageServer server, Terminal terminal) {
    this.source = source;
    this.server = server;
    this.terminal = terminal;
    this.files = List.of(source.path());
  }

  /** Looks again and again, until its thread is interrupted. */
  void untilInterrupted() {
    try {
      while (!Thread.currentThread().isInterrupted()) {
        lookAgain();
        Thread.sleep(EVERY);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Shows the wall anew, or what is wrong with it, if a file is another than it was. */
  void lookAgain() {
    String now = stamp();
    if (!now.equals(seen)) {
      seen = now;
      try {
        show();
      } catch (RuntimeException | Error e) {
        Defect.tell(source.path().toString(), e, terminal.err());
        server.fault(source.name() + ": a defect of the program, not of your file: " + e);
      }
    }
  }

  /** What tells a file from what it was before it was saved. */
  private String stamp() {
    return files.stream().map(Watching::stamp).collect(Collectors.joining("\n"));
  }

  private static String stamp(Path file) {
    try {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      return found.lastModifiedTime() + " " + found.size() + " " + found.fileKey();
    } catch (IOException e) {
      return "not there";
    }
  }

  private void show() {
    try {
      Inputs inputs = Inputs.of(source);
      follow(inputs.paths());
      Design design = inputs.design();
      if (design instanceof Design.Judged judged) {
        server.show(showing(judged));
        new Summary(judged.checked()).print(terminal.out());
      } else {
        fault(lines((Design.Unreadable) design));
      }
    } catch (Source.SourceException e) {
      fault(e.getMessage());
    }
  }

  /** A list that is named for the first time is followed as it is now. */
  private void follow(List<Path> paths) {
    if (!files.equals(paths)) {
      files = paths;
      seen = stamp();
    }
  }

  private void fault(String words) {
    terminal.err().println(words);
    server.fault(words);
  }

  private static String lines(Design.Unreadable design) {
    return design.findings().stream().map(FindingLine::of).collect(Collectors.joining("\n"));
  }

  private static Showing showing(Design.Judged design) {
    Bill bill = Bill.of(design);
    WallPage page = WallInSpace.of(design.checked(), bill.figures(), bill.costs());
    byte[] model = SceneWriter.write(WallModel.of(design.checked()));
    return new Showing(page, model, () -> Deliverable.of(design));
  }
}
