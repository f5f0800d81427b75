package gylebook.testing;

import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// Seeded laws: what must hold for any input. A failure names the seed that shows it again.
public final class Cases {
  private Cases() {}

  /// Tries a law on many seeded draws; `-Dcase.seed=N` tries one alone.
  public static void each(int count, Consumer<RandomGenerator> law) {
    Long only = Long.getLong("case.seed");
    long first = only == null ? 1 : only;
    long last = only == null ? count : only;
    for (long seed = first; seed <= last; seed++) {
      try {
        law.accept(RandomGeneratorFactory.of("L64X128MixRandom").create(seed));
      } catch (AssertionError | RuntimeException failure) {
        throw new AssertionError("case.seed=" + seed + ": " + failure.getMessage(), failure);
      }
    }
  }
}
