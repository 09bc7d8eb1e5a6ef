package plycrag.app;

import java.util.Optional;
import plycrag.files.Digest;
import plycrag.files.json.Manifest;
import plycrag.params.ParameterFile;
import plycrag.params.Parameters;
import plycrag.params.PriceFile;
import plycrag.params.PriceList;
import plycrag.params.PriceReading;
import plycrag.params.Reading;

/**
 * A parameter file with the files that it names, as far as they had to be read.
 *
 * @param reading what came of the parameter file
 * @param prices what came of the price list; without offers if the file names none
 * @param origin names and hashes
 */
record Inputs(Reading reading, PriceReading prices, Manifest.Origin origin) {

  /** Reads a parameter file and the price list that it names. */
  static Inputs of(Source source) throws Source.SourceException {
    byte[] content = source.bytes();
    Reading reading = ParameterFile.read(source.path().toString(), content);
    Manifest.Input parameters = input(source, content);
    Optional<String> named =
        reading.parameters().map(Parameters::buying).flatMap(buying -> buying.prices());
    if (named.isEmpty()) {
      Manifest.Origin alone = new Manifest.Origin(Version.number(), parameters, Optional.empty());
      return new Inputs(reading, new PriceReading(PriceList.empty()), alone);
    }
    Source list = source.beside(named.get());
    byte[] prices = list.bytes();
    Manifest.Origin origin =
        new Manifest.Origin(Version.number(), parameters, Optional.of(input(list, prices)));
    return new Inputs(reading, PriceFile.read(list.path().toString(), prices), origin);
  }

  private static Manifest.Input input(Source source, byte[] content) {
    return new Manifest.Input(source.name(), Digest.sha256(content));
  }

  /** What becomes of them. */
  Design design() {
    return Design.of(reading, prices);
  }
}
