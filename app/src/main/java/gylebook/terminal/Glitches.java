package gylebook.terminal;

import gylebook.units.AnyUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// What goes wrong between an instrument and who listens: by the seed, each kind once in a day, on
/// one of the instruments.
@AnyUnit("instruments of a rehearsal measure temperatures and shares")
final class Glitches {
  private static final double WITHIN_SEC = 4 * 3600;
  private static final double SILENT_SEC = 600;
  private static final double SHORT_SEC = 60;
  private static final int FLOOD_COUNT = 60;
  private static final double POWER_ON_C = 85;
  private static final double CLOCK_OFF_SEC = 3600;

  private final List<Episode> episodes;

  /// What may go wrong.
  enum Kind {
    SILENCE("was silent"),
    GARBAGE("sent garbage"),
    POWER_ON("sent its power-on value of 85 C"),
    TWICE("sent everything twice"),
    FLOOD("flooded the line"),
    CLOCK("had its clock an hour ahead");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /// One stretch of one kind on one instrument.
  record Episode(Kind kind, String instrument, double fromSec, double toSec) {
    String words() {
      return String.format(
          Locale.ROOT,
          "%s %s from %d:%02d on",
          instrument,
          kind.words,
          (int) fromSec / 3600,
          (int) fromSec % 3600 / 60);
    }
  }

  private Glitches(List<Episode> episodes) {
    this.episodes = List.copyOf(episodes);
  }

  /// None.
  static Glitches none() {
    return new Glitches(List.of());
  }

  static Glitches of(long seed, List<String> instruments) {
    RandomGenerator dice = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    List<Episode> episodes = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      String instrument = instruments.get(dice.nextInt(instruments.size()));
      double fromSec = WITHIN_SEC * dice.nextDouble();
      double forSec = kind == Kind.SILENCE ? SILENT_SEC : SHORT_SEC;
      episodes.add(new Episode(kind, instrument, fromSec, fromSec + forSec));
    }
    return new Glitches(episodes);
  }

  /// What an instrument really sends of what it shows; nothing when it is silent.
  List<Outlet.Sent> sent(String instrument, double number, double atSec, Instant now) {
    String text = String.format(Locale.ROOT, "%.2f", number);
    List<Outlet.Sent> sent =
        new ArrayList<>(List.of(new Outlet.Sent(instrument, text, number, now)));
    for (Episode one : episodes) {
      if (one.instrument().equals(instrument) && atSec >= one.fromSec() && atSec < one.toSec()) {
        sent = spoilt(one.kind(), sent);
      }
    }
    return sent;
  }

  private static List<Outlet.Sent> spoilt(Kind kind, List<Outlet.Sent> sent) {
    return switch (kind) {
      case SILENCE -> List.of();
      case FLOOD -> repeated(sent, FLOOD_COUNT);
      case TWICE -> repeated(sent, 2);
      case GARBAGE -> changed(sent, "\u00bf" + "#~", Double.NaN);
      case POWER_ON -> changed(sent, "85.00", POWER_ON_C);
      case CLOCK ->
          sent.stream()
              .map(
                  one ->
                      new Outlet.Sent(
                          one.instrument(),
                          one.text(),
                          one.number(),
                          one.claimed().plusSeconds((long) CLOCK_OFF_SEC)))
              .toList();
    };
  }

  private static List<Outlet.Sent> repeated(List<Outlet.Sent> sent, int times) {
    return Collections.nCopies(times, sent).stream().flatMap(List::stream).toList();
  }

  private static List<Outlet.Sent> changed(List<Outlet.Sent> sent, String text, double number) {
    return sent.stream()
        .map(one -> new Outlet.Sent(one.instrument(), text, number, one.claimed()))
        .toList();
  }

  /// What went wrong and when; for afterwards.
  List<String> told() {
    return episodes.stream().map(Episode::words).toList();
  }
}
