package plycrag.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's version, as it was built. */
final class Version implements IVersionProvider {
  private static final String RESOURCE = "/plycrag/version.properties";

  /** The version alone. */
  static String number() {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream(RESOURCE)) {
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"plycrag " + number()};
  }
}
