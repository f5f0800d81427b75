package gylebook.device;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/// A microcontroller that posts what it measured: its name, the digest of its token, and what it
/// measures. The token itself is kept nowhere.
public record Board(String name, String tokenDigest, List<Source> sources) {
  /// The shortest token that is let in: 16 characters. An assumption; one made by the program is
  /// longer.
  static final int TOKEN_LEAST = 16;

  /// An instrument on the board and the form of what is posted.
  public record Source(Instrument instrument, Payload payload) {}

  /// Keeps its own copy of the sources.
  public Board {
    sources = List.copyOf(sources);
    if (!tokenDigest.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException(
          "tokenDigest has " + tokenDigest.length() + " characters; it must be 64 of 0-9a-f.");
    }
  }

  /// The digest under which a token is kept: SHA-256. Tokens are random, so nothing slower is
  /// needed.
  public static String digest(String token) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(token.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }

  /// Whether this is the board's token; takes as long whatever is wrong with it.
  boolean owns(String token) {
    byte[] given = digest(token).getBytes(StandardCharsets.US_ASCII);
    boolean same = MessageDigest.isEqual(given, tokenDigest.getBytes(StandardCharsets.US_ASCII));
    return same && token.length() >= TOKEN_LEAST;
  }
}
