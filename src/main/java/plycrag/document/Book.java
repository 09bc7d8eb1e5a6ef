package plycrag.document;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The build book: what a person reads.
 *
 * @param title the wall's name
 * @param subtitle what it is, in a line
 * @param stamp words across the head of every page, empty for none
 * @param footer words at the foot of every page
 * @param sections in the order of the work
 */
public record Book(
    String title, String subtitle, String stamp, String footer, List<Section> sections) {
  /** Copies the sections. */
  public Book {
    sections = List.copyOf(sections);
  }

  /** All parts that have a line in the lists, by their marks. */
  public Set<String> marks() {
    Set<String> marks = new TreeSet<>();
    for (Section section : sections) {
      for (Block block : section.blocks()) {
        if (block instanceof Listing listing) {
          listing.table().marks().forEach(marks::addAll);
        }
      }
    }
    return marks;
  }

  /**
   * A section.
   *
   * @param heading its heading
   * @param blocks what it holds, in order
   */
  public record Section(String heading, List<Block> blocks) {
    /** Copies the blocks. */
    public Section {
      blocks = List.copyOf(blocks);
    }
  }

  /** A part of a section. */
  public sealed interface Block {}

  /** A paragraph. */
  public record Paragraph(String text) implements Block {}

  /**
   * A caution.
   *
   * @param word its first word, set in bold
   * @param text the rest
   */
  public record Caution(String word, String text) implements Block {}

  /** Things to do or have, each with a box to tick. */
  public record Checklist(List<String> items) implements Block {
    /** Copies the items. */
    public Checklist {
      items = List.copyOf(items);
    }
  }

  /** Sentences one under the other. */
  public record Points(List<String> items) implements Block {
    /** Copies the items. */
    public Points {
      items = List.copyOf(items);
    }
  }

  /**
   * A way to another file of the folder.
   *
   * @param words what is there
   * @param path from the book, of letters, digits, dots, hyphens and slashes
   */
  public record Link(String words, String path) implements Block {
    /** Rejects what may lead out of the folder. */
    public Link {
      if (!path.matches("[a-z0-9][a-z0-9-]*([./][a-z0-9-]+)*")) {
        throw new IllegalArgumentException("not a path within the folder: " + path);
      }
    }
  }

  /**
   * A drawing.
   *
   * @param drawing what is shown; its title is the text alternative
   * @param caption what it is for
   * @param isOfParts whether a part's line in the lists leads to it
   */
  public record Figure(Drawing drawing, String caption, boolean isOfParts) implements Block {
    /** One to which no list leads. */
    public Figure(Drawing drawing, String caption) {
      this(drawing, caption, false);
    }
  }

  /**
   * A list for reading.
   *
   * @param table its title is the caption; its columns are headings for a person
   */
  public record Listing(Table table) implements Block {}

  /**
   * A step of the work.
   *
   * @param number from 1
   * @param heading what is done
   * @param picture of it; none where nothing is set
   * @param taken what it takes: how many or which, and what they are
   * @param words what to do, a sentence each
   * @param checks what ends it, each to be ticked
   * @param caution before it, if it has one
   */
  public record Step(
      int number,
      String heading,
      Optional<Drawing> picture,
      List<Taken> taken,
      List<String> words,
      List<String> checks,
      Optional<Caution> caution)
      implements Block {
    /** Copies the lists. */
    public Step {
      taken = List.copyOf(taken);
      words = List.copyOf(words);
      checks = List.copyOf(checks);
    }
  }

  /** Figures in a row, each with its name. */
  public record Facts(List<WallPage.Fact> facts) implements Block {
    /** Copies the list. */
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  /**
   * What a step takes of one kind.
   *
   * @param count how many, or their marks
   * @param what they are
   */
  public record Taken(String count, String what) {}
}
