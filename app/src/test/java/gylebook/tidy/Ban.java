package gylebook.tidy;

import java.util.List;

/// A call some rooms must not make, why, and what to do instead.
record Ban(Kind kind, String call, String instead) {

  /// What the call reaches for.
  enum Kind {
    CLOCK,
    CHANCE,
    WORLD
  }

  private static final String TIME = "time does not pass in here; take it as an argument";
  private static final String LUCK =
      "luck must repeat; take a seeded RandomGenerator, or the id, as an argument";
  private static final String OUT = "computing is silent; give the value back";

  /// Calls by the type that declares them; `<init>` is a constructor without arguments.
  static final List<Ban> ALL =
      List.of(
          new Ban(Kind.CLOCK, "java.time.Instant.now", TIME),
          new Ban(Kind.CLOCK, "java.time.LocalDate.now", TIME),
          new Ban(Kind.CLOCK, "java.time.LocalTime.now", TIME),
          new Ban(Kind.CLOCK, "java.time.LocalDateTime.now", TIME),
          new Ban(Kind.CLOCK, "java.time.ZonedDateTime.now", TIME),
          new Ban(Kind.CLOCK, "java.time.OffsetDateTime.now", TIME),
          new Ban(Kind.CLOCK, "java.time.Year.now", TIME),
          new Ban(Kind.CLOCK, "java.time.Clock.systemUTC", TIME),
          new Ban(Kind.CLOCK, "java.time.Clock.systemDefaultZone", TIME),
          new Ban(Kind.CLOCK, "java.lang.System.currentTimeMillis", TIME),
          new Ban(Kind.CLOCK, "java.lang.System.nanoTime", TIME),
          new Ban(Kind.CLOCK, "java.util.Date.<init>", TIME),
          new Ban(Kind.CLOCK, "java.util.Calendar.getInstance", TIME),
          new Ban(Kind.CLOCK, "java.lang.Thread.sleep", "waiting belongs to the app room"),
          new Ban(Kind.CHANCE, "java.lang.Math.random", LUCK),
          new Ban(Kind.CHANCE, "java.util.Random.<init>", LUCK),
          new Ban(Kind.CHANCE, "java.util.SplittableRandom.<init>", LUCK),
          new Ban(Kind.CHANCE, "java.security.SecureRandom.<init>", LUCK),
          new Ban(Kind.CHANCE, "java.util.UUID.randomUUID", LUCK),
          new Ban(Kind.CHANCE, "java.util.concurrent.ThreadLocalRandom.current", LUCK),
          new Ban(Kind.CHANCE, "java.util.random.RandomGenerator.getDefault", LUCK),
          new Ban(Kind.CHANCE, "java.util.Collections.shuffle", LUCK),
          new Ban(Kind.WORLD, "java.lang.System.out", OUT),
          new Ban(Kind.WORLD, "java.lang.System.err", OUT),
          new Ban(Kind.WORLD, "java.lang.System.getenv", "take the setting as an argument"),
          new Ban(Kind.WORLD, "java.lang.System.getProperty", "take the setting as an argument"),
          new Ban(Kind.WORLD, "java.lang.System.exit", "only the app room ends the program"),
          new Ban(Kind.WORLD, "java.util.Locale.getDefault", "use Locale.ROOT"),
          new Ban(Kind.WORLD, "java.time.ZoneId.systemDefault", "take the zone as an argument"),
          new Ban(Kind.WORLD, "java.lang.Throwable.printStackTrace", "let the exception travel"));
}
