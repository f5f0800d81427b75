package gylebook.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/// Which Gylebook this is. The build writes the number into `edition.properties`.
final class Edition implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"Gylebook " + number()};
  }

  /// The number alone.
  static String number() {
    try (InputStream file = Edition.class.getResourceAsStream("/gylebook/edition.properties")) {
      Properties edition = new Properties();
      edition.load(file);
      return edition.getProperty("number", "of unknown edition");
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
