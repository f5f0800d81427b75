package gylebook.gate;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.random.RandomGenerator;

/// The code that lets one screen in, once: read from a picture or typed.
///
/// There is one at most. It ends when it was used, when its time is over, when another is asked
/// for, and when it was guessed at too often: 5 tries at 100 million codes.
public final class Codes {
  /// How long a code is good for; an assumption: time to walk to the kettle and type it.
  public static final Duration LASTS = Duration.ofMinutes(5);

  static final int TRIES = 5;
  private static final int CODES = 100_000_000;

  private final LongSupplier nanos;
  private final RandomGenerator chance;
  private Optional<Open> open = Optional.empty();

  private record Open(String digits, long untilNanos, int triesLeft) {}

  /// @param nanos time that only ever goes on, so that a clock set back prolongs nothing
  /// @param chance where codes come from; outside tests nothing that can be foretold
  public Codes(LongSupplier nanos, RandomGenerator chance) {
    this.nanos = nanos;
    this.chance = chance;
  }

  /// A new code of 8 digits; the one before is good for nothing any more.
  public synchronized String fresh() {
    String digits = String.format(Locale.ROOT, "%08d", chance.nextInt(CODES));
    open = Optional.of(new Open(digits, nanos.getAsLong() + LASTS.toNanos(), TRIES));
    return digits;
  }

  /// How much longer the code is good for; empty when there is none.
  public synchronized Optional<Duration> left() {
    return standing().map(code -> Duration.ofNanos(code.untilNanos() - nanos.getAsLong()));
  }

  /// Ends the code.
  public synchronized void end() {
    open = Optional.empty();
  }

  /// Whether this is the code; if so it is used up. Blanks and dashes do not count.
  public synchronized boolean take(String typed) {
    Optional<Open> code = standing();
    if (code.isEmpty()) {
      return false;
    }
    byte[] given = typed.replaceAll("[\\s-]", "").getBytes(StandardCharsets.UTF_8);
    byte[] right = code.get().digits().getBytes(StandardCharsets.UTF_8);
    boolean same = MessageDigest.isEqual(given, right);
    int left = code.get().triesLeft() - 1;
    open =
        same || left <= 0
            ? Optional.empty()
            : Optional.of(new Open(code.get().digits(), code.get().untilNanos(), left));
    return same;
  }

  private Optional<Open> standing() {
    open = open.filter(code -> nanos.getAsLong() - code.untilNanos() < 0);
    return open;
  }
}
