package gylebook.gate;

import static gylebook.gate.Caller.Errand.READING;

import java.net.InetAddress;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/// Decides who may come in.
///
/// This machine itself always may, by the names of its loopback. Everybody else only when the
/// program was opened to the home network, by a name this machine has there, and with the token of
/// a screen that was let in.
public final class Gate {
  private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "[::1]");
  private static final String ELSEWHERE = "This page answers only on its own machine.";

  private final Optional<Opened> opened;

  /// What there is when it is open to the home network.
  ///
  /// @param authority where only encrypted lines count: who vouches for this machine
  private record Opened(
      Supplier<Home> home,
      Codes codes,
      Screens screens,
      Pace pace,
      Optional<HomeAuthority> authority) {}

  private Gate(Optional<Opened> opened) {
    this.opened = opened;
  }

  /// Only this machine itself.
  public static Gate closed() {
    return new Gate(Optional.empty());
  }

  /// Open to the home network.
  ///
  /// @param home what the machine is called there, now
  /// @param nanos time that only ever goes on
  /// @param authority where only encrypted lines are to count: who vouches for this machine
  public static Gate open(
      Supplier<Home> home,
      Codes codes,
      Screens screens,
      LongSupplier nanos,
      Optional<HomeAuthority> authority) {
    return new Gate(Optional.of(new Opened(home, codes, screens, new Pace(nanos), authority)));
  }

  /// Whether anybody else may come in at all.
  public boolean isOpen() {
    return opened.isPresent();
  }

  /// Where others come by encrypted lines only: who vouches for this machine.
  public Optional<HomeAuthority> authority() {
    return opened.flatMap(Opened::authority);
  }

  /// The codes that let screens in.
  public Optional<Codes> codes() {
    return opened.map(Opened::codes);
  }

  /// The screens that were let in.
  public Optional<Screens> screens() {
    return opened.map(Opened::screens);
  }

  /// What the machine is called on the home network.
  public Optional<Home> home() {
    return opened.map(one -> one.home().get());
  }

  /// Decides.
  public Let ask(Caller caller) {
    if (caller.remote().isLoopbackAddress() && LOOPBACK.contains(caller.host())) {
      return new Let.Own();
    }
    if (opened.isEmpty()) {
      return new Let.Refused(ELSEWHERE);
    }
    Home home = opened.get().home().get();
    if (!home.near(caller.remote()) || !home.called(caller.host())) {
      return new Let.Refused(ELSEWHERE);
    }
    return fromHome(opened.get(), caller);
  }

  private static Let fromHome(Opened open, Caller caller) {
    Optional<Let> pause = pause(open.pace(), caller);
    if (pause.isPresent()) {
      return pause.get();
    }
    // A board seldom speaks TLS; its token opens nothing else.
    boolean plain = caller.errand() == Caller.Errand.OPEN || caller.errand() == READING;
    if (open.authority().isPresent() && !caller.secure() && !plain) {
      return new Let.Unencrypted("On the home network this program answers by https only.");
    }
    return switch (caller.errand()) {
      case DOORSTEP, CODE, READING, OPEN -> new Let.Doorstep();
      case BOOK -> shown(open.screens(), caller);
    };
  }

  private static Let shown(Screens screens, Caller caller) {
    return caller
        .token()
        .flatMap(screens::owner)
        .<Let>map(Let.In::new)
        .orElseGet(
            () ->
                new Let.Stranger(
                    caller.token().isPresent()
                        ? "This screen is not let in any more."
                        : "This screen is not let in yet."));
  }

  private static Optional<Let> pause(Pace pace, Caller caller) {
    InetAddress from = caller.remote();
    if (caller.errand() == READING) {
      return pace.allows(from, Pace.Kind.READING)
          ? Optional.empty()
          : Optional.of(new Let.Pause("Too many readings at once; send fewer.", 1));
    }
    if (!pace.allows(from, Pace.Kind.ANYTHING)) {
      return Optional.of(new Let.Pause("That was a lot at once. It goes on in a moment.", 2));
    }
    if (caller.errand() == Caller.Errand.CODE && !pace.allows(from, Pace.Kind.CODE)) {
      return Optional.of(
          new Let.Pause("Those were many codes. Wait half a minute, then try again.", 30));
    }
    if (caller.changes() && !pace.allows(from, Pace.Kind.CHANGE)) {
      return Optional.of(
          new Let.Pause("Many changes at once. Nothing is lost; it goes on in a moment.", 2));
    }
    return Optional.empty();
  }
}
