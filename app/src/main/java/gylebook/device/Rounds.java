package gylebook.device;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.InstantSource;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/// Goes round and round on a thread of its own until closed: one round, a pause, the next; after a
/// round that failed the pause grows.
final class Rounds implements Listening {
  private static final System.Logger LOG = System.getLogger(Rounds.class.getName());
  private static final int CLOSE_SEC = 3;

  private final Duration every;
  private final Patience patience;
  private final InstantSource clock;
  private final Round round;
  private final CountDownLatch stop = new CountDownLatch(1);
  private final Thread thread;
  private volatile Line line;

  /// One round; what it throws says why the line is down.
  interface Round {
    void go() throws IOException, InterruptedException;
  }

  Rounds(String name, Duration every, Patience patience, InstantSource clock, Round round) {
    this.every = every;
    this.patience = patience;
    this.clock = clock;
    this.round = round;
    this.line = new Line.Down(clock.instant(), "not asked yet");
    this.thread = Thread.ofPlatform().daemon().name(name).unstarted(this::run);
  }

  /// Begins. Not done by the constructor: the first round may need what is built after it.
  void start() {
    thread.start();
  }

  /// For rounds that last: says that the line is up before the round is over.
  void up() {
    if (!(line instanceof Line.Up)) {
      line = new Line.Up(clock.instant());
    }
  }

  private void run() {
    Duration pause = patience.first();
    try {
      boolean stopped = false;
      while (!stopped) {
        boolean good = once();
        pause = good ? patience.first() : pause;
        stopped = stop.await((good ? every : pause).toMillis(), TimeUnit.MILLISECONDS);
        pause = good ? pause : longer(pause);
      }
    } catch (InterruptedException _) {
      // Closed in the middle of a round.
    }
  }

  private Duration longer(Duration pause) {
    Duration twice = pause.multipliedBy(2);
    return twice.compareTo(patience.most()) > 0 ? patience.most() : twice;
  }

  private boolean once() throws InterruptedException {
    try {
      round.go();
      up();
      return true;
    } catch (IOException failed) {
      line = new Line.Down(clock.instant(), String.valueOf(failed.getMessage()));
    } catch (RuntimeException broken) {
      line = new Line.Down(clock.instant(), "a fault of the program: " + broken);
      LOG.log(Level.WARNING, "A round of " + thread.getName() + " broke off", broken);
    }
    return false;
  }

  @Override
  public Line line() {
    return line;
  }

  @Override
  public void close() {
    stop.countDown();
    thread.interrupt();
    try {
      thread.join(Duration.ofSeconds(CLOSE_SEC));
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
    }
  }
}
