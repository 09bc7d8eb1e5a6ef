package plycrag.layout.sheets;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.layout.joints.Gusset;
import plycrag.layout.sheets.OffcutStore.Room;
import plycrag.solve.fixing.FacePlace;
import plycrag.wall.Wall;

/**
 * What is cut from that which the sheets leave over: cover strips first, then gussets, the largest
 * first, each from the smallest offcut that takes it; on a further sheet where none does.
 *
 * @param strips facet by facet
 * @param gussets in the order of their marks
 * @param furtherSheets how many sheets of the first kind they take beside those of the pieces
 */
public record OffcutParts(List<CoverStrip> strips, List<LaidGusset> gussets, int furtherSheets) {
  /** Copies the lists. */
  public OffcutParts {
    strips = List.copyOf(strips);
    gussets = List.copyOf(gussets);
  }

  /**
   * What a wall takes.
   *
   * @param sheets whose offcuts it is laid on
   * @param gussets that are wanted
   */
  public static OffcutParts of(Wall wall, List<LaidSheet> sheets, List<Gusset> gussets) {
    OffcutStore store = OffcutStore.of(wall, sheets);
    List<CoverStrip> strips = CoverStrips.laid(wall, store);
    LaidGusset[] laid = new LaidGusset[gussets.size()];
    IntStream.range(0, laid.length)
        .boxed()
        .sorted(Comparator.comparingDouble(at -> -area(gussets.get(at))))
        .forEach(at -> laid[at] = laid(gussets.get(at), store));
    return new OffcutParts(strips, List.of(laid), store.further());
  }

  private static double area(Gusset gusset) {
    FacePlace size = gusset.fit().size();
    return size.along() * size.across();
  }

  private static LaidGusset laid(Gusset gusset, OffcutStore store) {
    FacePlace size = gusset.fit().size();
    double length = Math.max(size.along(), size.across());
    double width = Math.min(size.along(), size.across());
    Optional<Room> room = store.take(length, width);
    if (room.isEmpty()) {
      store.addFurther();
      room = store.take(length, width);
    }
    Room found = room.orElseThrow();
    return new LaidGusset(gusset, new OffcutPart(gusset.mark(), found.sheet(), found.box()));
  }

  /** All of them. */
  public List<OffcutPart> parts() {
    return Stream.concat(
            strips.stream().flatMap(strip -> strip.parts().stream()),
            gussets.stream().map(LaidGusset::part))
        .toList();
  }

  /** Those of one sheet. */
  public List<OffcutPart> of(LaidSheet sheet) {
    return parts().stream().filter(part -> part.isFrom(sheet)).toList();
  }

  /** The gusset of a mark; empty where it is none's. */
  public Optional<LaidGusset> gusset(String mark) {
    return gussets.stream().filter(one -> one.gusset().mark().equals(mark)).findFirst();
  }
}
