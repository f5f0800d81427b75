package gylebook.gate;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;

/// The screens that were let in, each with a token of its own.
public final class Screens {
  /// A screen nobody has used for so long is out; an assumption: a winter without brewing.
  static final Duration FORGOTTEN = Duration.ofDays(180);

  /// When a screen was last seen is written down no oftener than this.
  static final Duration SEEN_WRITTEN = Duration.ofMinutes(15);

  static final int NAME_MOST = 40;
  private static final int TOKEN_BYTES = 32;
  private static final int ID_BYTES = 8;

  private final ScreenFile file;
  private final InstantSource clock;
  private final RandomGenerator chance;
  private final List<Consumer<String>> ears = new CopyOnWriteArrayList<>();
  private List<Screen> screens;
  private Instant written;

  /// What came of letting one in.
  public sealed interface LetIn {
    /// It is in.
    ///
    /// @param token what it shows from now on; nobody here knows it afterwards
    record Done(Screen screen, String token) implements LetIn {}

    /// The disk refused, so it is not in.
    record NotKept(String because) implements LetIn {}
  }

  /// @param file where they are kept
  /// @param chance where tokens come from; outside tests nothing that can be foretold
  public Screens(ScreenFile file, InstantSource clock, RandomGenerator chance) {
    this.file = file;
    this.clock = clock;
    this.chance = chance;
    this.screens = file.read();
    this.written = clock.instant();
  }

  /// All of them, in the order they came.
  public synchronized List<Screen> all() {
    return List.copyOf(screens);
  }

  /// Whether the screen of this id is in.
  public synchronized boolean isIn(String screenId) {
    return screens.stream().anyMatch(screen -> screen.screenId().equals(screenId));
  }

  /// Tells somebody of each screen that is out, by its id, after it is.
  public void onOut(Consumer<String> ear) {
    ears.add(ear);
  }

  /// Lets one in.
  ///
  /// @param name how it calls itself
  public synchronized LetIn letIn(String name) {
    byte[] bytes = new byte[TOKEN_BYTES];
    chance.nextBytes(bytes);
    String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    byte[] id = new byte[ID_BYTES];
    chance.nextBytes(id);
    Instant now = clock.instant();
    Screen screen = new Screen(HexFormat.of().formatHex(id), tidy(name), now, now, digest(token));
    List<Screen> more = new ArrayList<>(screens);
    more.add(screen);
    Optional<String> refusal = file.write(more);
    if (refusal.isPresent()) {
      return new LetIn.NotKept(refusal.get());
    }
    screens = List.copyOf(more);
    return new LetIn.Done(screen, token);
  }

  /// The screen that a token belongs to. Every screen is compared, so that the time does not tell.
  public synchronized Optional<Screen> owner(String token) {
    byte[] given = digest(token).getBytes(StandardCharsets.US_ASCII);
    Instant now = clock.instant();
    List<Screen> after = new ArrayList<>();
    Optional<Screen> owner = Optional.empty();
    for (Screen screen : screens) {
      byte[] known = screen.tokenDigest().getBytes(StandardCharsets.US_ASCII);
      boolean same = MessageDigest.isEqual(given, known);
      boolean forgotten = screen.seen().plus(FORGOTTEN).isBefore(now);
      Screen seen = same && !forgotten ? seen(screen, now) : screen;
      if (same && !forgotten) {
        owner = Optional.of(seen);
      }
      after.add(seen);
    }
    screens = List.copyOf(after);
    if (owner.isPresent() && written.plus(SEEN_WRITTEN).isBefore(now)) {
      written = now;
      // When it cannot be written it is only the time of the last visit that is older than true.
      file.write(screens);
    }
    return owner;
  }

  private static Screen seen(Screen screen, Instant now) {
    return new Screen(screen.screenId(), screen.name(), screen.since(), now, screen.tokenDigest());
  }

  /// Turns a screen out, at once.
  ///
  /// @return why that could not be written down; it is out all the same until the next start
  public Optional<String> out(String screenId) {
    Optional<String> refusal;
    synchronized (this) {
      screens = screens.stream().filter(one -> !one.screenId().equals(screenId)).toList();
      refusal = file.write(screens);
    }
    ears.forEach(ear -> ear.accept(screenId));
    return refusal;
  }

  private static String tidy(String name) {
    String one = name.replaceAll("[\\p{Cntrl}\\p{Cf}\\s]+", " ").strip();
    String most =
        one.codePointCount(0, one.length()) > NAME_MOST
            ? one.substring(0, one.offsetByCodePoints(0, NAME_MOST))
            : one;
    return most.isEmpty() ? "a screen without a name" : most;
  }

  /// The digest under which a token is kept: SHA-256. A token is 256 bits of chance, so nothing
  /// slower is needed.
  static String digest(String token) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(token.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }
}
