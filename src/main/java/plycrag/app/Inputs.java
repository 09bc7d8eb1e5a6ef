package plycrag.app;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.catalog.FlatSteel;
import plycrag.files.Digest;
import plycrag.files.OutputFile;
import plycrag.files.json.Manifest;
import plycrag.prices.PriceList;
import plycrag.read.ParameterFile;
import plycrag.read.Parameters;
import plycrag.read.Reading;
import plycrag.read.lists.PositionFile;
import plycrag.read.lists.PriceFile;
import plycrag.read.lists.SteelFile;
import plycrag.wall.InsertPosition;

/**
 * A parameter file with the files that it names, as far as they had to be read.
 *
 * @param reading what came of the parameter file
 * @param prices what came of the price list; without offers if the file names none
 * @param positions what came of the list of positions; none if the file names no list
 * @param steel what came of the catalogue of brackets; none if the file names none
 * @param origin names and hashes
 * @param copies of all that was read, for the folder that is made from it
 * @param paths of all that was read, as they are on the disk
 */
record Inputs(
    Reading<Parameters> reading,
    Reading<PriceList> prices,
    Reading<List<InsertPosition>> positions,
    Reading<List<FlatSteel>> steel,
    Manifest.Origin origin,
    List<OutputFile> copies,
    List<Path> paths) {

  /** Copies the lists. */
  Inputs {
    copies = List.copyOf(copies);
    paths = List.copyOf(paths);
  }

  /** A file that was named, and what it holds. */
  private static final class Named {
    private final Source source;
    private final Path named;
    private final byte[] content;

    private Named(Source source, Path named) throws Source.SourceException {
      this.source = source;
      this.named = named;
      this.content = source.bytes();
    }

    static Named of(Source source) throws Source.SourceException {
      return new Named(source, Path.of(source.name()));
    }

    static Optional<Named> beside(Source file, Optional<String> path)
        throws Source.SourceException {
      return path.isPresent()
          ? Optional.of(new Named(file.beside(path.get()), Path.of(path.get())))
          : Optional.empty();
    }

    String path() {
      return source.path().toString();
    }

    Manifest.Input input() {
      return new Manifest.Input(source.name(), Digest.sha256(content));
    }
  }

  /** Reads a parameter file and the lists that it names. */
  static Inputs of(Source source) throws Source.SourceException {
    Named file = Named.of(source);
    Reading<Parameters> reading = ParameterFile.read(file.path(), file.content);
    Optional<Parameters> parameters = reading.value();
    Optional<Named> prices = Named.beside(source, parameters.flatMap(all -> all.buying().prices()));
    Optional<Named> positions =
        Named.beside(source, parameters.flatMap(all -> all.inserts().positions()));
    Optional<Named> steel =
        Named.beside(source, parameters.flatMap(all -> all.framework().joints().steel().list()));
    return new Inputs(
        reading,
        prices
            .map(list -> PriceFile.read(list.path(), list.content))
            .orElseGet(() -> Reading.of(PriceList.empty())),
        positions
            .map(list -> PositionFile.read(list.path(), list.content, parameters.orElseThrow()))
            .orElseGet(() -> Reading.of(List.of())),
        steel
            .map(
                list ->
                    SteelFile.read(
                        list.path(), list.content, parameters.orElseThrow().wall().unit()))
            .orElseGet(() -> Reading.of(List.of())),
        new Manifest.Origin(
            Version.number(),
            file.input(),
            prices.map(Named::input),
            positions.map(Named::input),
            steel.map(Named::input)),
        copies(file, List.of(prices, positions, steel)),
        Stream.of(Optional.of(file), prices, positions, steel)
            .flatMap(Optional::stream)
            .map(named -> named.source.path())
            .toList());
  }

  /** Those whose places are given by how they are named come first. */
  private static List<OutputFile> copies(Named file, List<Optional<Named>> lists) {
    List<Named> named =
        lists.stream()
            .flatMap(Optional::stream)
            .sorted(Comparator.comparing(list -> list.named.isAbsolute()))
            .toList();
    InputCopies copies = new InputCopies(named.stream().map(list -> list.named).toList());
    copies.add(file.named, file.content);
    named.forEach(list -> copies.add(list.named, list.content));
    return copies.files();
  }

  /** What becomes of them. */
  Design design() {
    return Design.of(reading, prices, positions, steel);
  }
}
