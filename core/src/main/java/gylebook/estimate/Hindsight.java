package gylebook.estimate;

import gylebook.science.Source;
import gylebook.science.Trust;
import gylebook.simulate.BrewDay;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/// A finished day, looked at again: what all its readings together say.
///
/// On the day each reading corrects what is held at its moment, with what was known by then. Looked
/// at again, the whole day is told over and over from its beginning, each time from what was held
/// at the end of the time before, and each reading counts with so many times its variance as there
/// are rounds, so that in all it counts once. The corrections are smaller, so the model is bent
/// less at a time, and early readings are met with what later ones taught.
///
/// Tried on invented days the middles come out about as near as on the day, and the day itself is
/// told better; but now and then the rounds run into another explanation that fits and is wrong. So
/// both are held to be as likely: where they part, the doubt takes that in.
///
/// - Valid: a day that went as it was told; one that did not teaches wrong numbers.
/// - Source: the ensemble smoother with multiple data assimilation (Emerick and Reynolds 2013) has
///   the rule that the shares of all rounds add up to one; to repeat the filter instead of the
///   smoother is an engineer's choice.
///
/// @param start as it was held before the day
/// @param onDay as it was held at the end of the day
/// @param again as it is held after the last round
@AnyUnit("holds numbers of every unit")
public record Hindsight(Belief start, Belief onDay, Belief again) {
  /// More than on the day: chance must not pass for knowledge where nothing is to be seen.
  public static final int TWINS_COUNT = 300;

  private static final int ROUNDS_COUNT = 4;

  /// Looks at a day again.
  ///
  /// @param instruments all that was read
  /// @param onDay tells a belief the day as it was followed
  /// @param retold tells a belief the same day again, with nobody watching
  @Source(key = "emerick-2013", at = "inflation of the readings' errors", trust = Trust.SECOND_HAND)
  public static Hindsight of(
      BrewDay day,
      List<Instrument> instruments,
      long seed,
      int twinsCount,
      Consumer<Belief> onDay,
      Consumer<Belief> retold) {
    Belief start = Belief.atStart(day, instruments, seed, twinsCount);
    Belief first = start.copy();
    onDay.accept(first);
    Belief again = start.copy();
    for (int i = 0; i < ROUNDS_COUNT; i++) {
      again = again.backAtStart(ROUNDS_COUNT);
      retold.accept(again);
    }
    return new Hindsight(start, first, again);
  }

  /// What is held of a doubtful number, in its own doubts from its own middle.
  ///
  /// @param name as in [gylebook.simulate.Twins#doubts()]
  public Held number(String name) {
    return both(belief -> belief.twins().draws(name));
  }

  /// The same of how far an instrument reads high.
  public Held bias(String instrument) {
    return both(belief -> belief.traits().biasDraws(instrument));
  }

  /// Middle and spread of two beliefs that are as likely as each other, counted from what the same
  /// twins held before: so few draws lie a little off their own middle.
  private Held both(Function<Belief, double[]> draws) {
    Held before = Held.of(draws.apply(start));
    Held one = Held.of(draws.apply(onDay));
    Held other = Held.of(draws.apply(again));
    double mean = (one.mean() + other.mean()) / 2;
    double half = (one.mean() - other.mean()) / 2;
    double doubt =
        Math.sqrt((one.doubt() * one.doubt() + other.doubt() * other.doubt()) / 2 + half * half);
    return Held.normal((mean - before.mean()) / before.doubt(), doubt / before.doubt());
  }
}
