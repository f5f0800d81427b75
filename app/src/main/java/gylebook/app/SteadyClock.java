package gylebook.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.Supplier;

/// The time by which a day is kept: it begins at the wall clock and goes on by what has passed.
///
/// A machine without a clock of its own starts in the past and is put right hours later; somebody
/// sets the clock by hand; a wrong time server comes and goes. A boil of sixty minutes is to last
/// sixty minutes through all that. So the wall clock is asked once, when the program starts, and
/// from then on only how long the machine has been up, sleep included. Small corrections of the
/// wall clock are taken over, so that the two do not drift apart in a long ferment.
///
/// Where the wall clock stands behind the newest entry of the book at the start, time goes on from
/// that entry: nothing can have happened before what is already written. An entry that lies more
/// than a day ahead was itself written by a wrong clock, and the wall clock counts.
final class SteadyClock implements InstantSource {
  private static final Path UPTIME = Path.of("/proc/uptime");
  private static final double NANOS_PER_SEC = 1e9;

  /// A correction up to this is a clock that is kept right; beyond it somebody has set it.
  private static final Duration KEPT_RIGHT = Duration.ofSeconds(2);

  private static final Duration BELIEVED = Duration.ofDays(1);

  private final InstantSource wall;
  private final Supplier<Duration> passed;
  private Instant base;
  private Duration from;
  private Instant last;

  SteadyClock(InstantSource wall, Supplier<Duration> passed, Instant newest) {
    this.wall = wall;
    this.passed = passed;
    Instant now = wall.instant();
    boolean behind = now.isBefore(newest) && newest.isBefore(now.plus(BELIEVED));
    this.base = behind ? newest : now;
    this.from = passed.get();
    this.last = base;
  }

  /// The clock of this machine.
  ///
  /// @param newest when the newest entry of the book was written
  static SteadyClock ofThisMachine(Instant newest) {
    // The time since the machine came up counts its sleep, which the virtual machine's does not.
    boolean told = Files.isReadable(UPTIME);
    Supplier<Duration> passed = told ? SteadyClock::up : () -> Duration.ofNanos(System.nanoTime());
    return new SteadyClock(InstantSource.system(), passed, newest);
  }

  private static Duration up() {
    try {
      String words = Files.readString(UPTIME);
      double upSec = Double.parseDouble(words.substring(0, words.indexOf(' ')));
      return Duration.ofNanos(Math.round(upSec * NANOS_PER_SEC));
    } catch (IOException gone) {
      throw new UncheckedIOException("how long the machine is up cannot be read", gone);
    }
  }

  @Override
  public synchronized Instant instant() {
    Duration now = passed.get();
    Instant steady = base.plus(now.minus(from));
    Instant shown = wall.instant();
    if (Duration.between(steady, shown).abs().compareTo(KEPT_RIGHT) <= 0) {
      base = shown;
      from = now;
      steady = shown;
    }
    // Never backward: while a small correction is caught up, time stands still.
    last = steady.isAfter(last) ? steady : last;
    return last;
  }
}
