package gylebook.plan;

import gylebook.recipe.Boil;
import gylebook.recipe.Recipe;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.simulate.Settings;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import java.util.ArrayList;
import java.util.List;

/// The "if you are off by" list: what a unit of deviation does, near the plan.
final class Slopes {
  private static final double FIVE_MIN_SEC = 300;
  private static final double TENTH_FRAC = 0.1;

  private final double[] planNumber;
  private final List<Plan.Slope> slopes = new ArrayList<>();

  private Slopes(double[] planNumber) {
    this.planNumber = planNumber;
  }

  static List<Plan.Slope> of(BrewDay day) {
    Slopes slopes = new Slopes(Ensemble.nominalOutcomes(day));
    Settings set = day.settings();
    slopes.off(
        new Off("liquor over", "liquorL", 1, 3),
        with(day, set.withLiquor(set.liquorL() + 1, set.topUpL())),
        Outcome.STRENGTH,
        Outcome.FERMENTER);
    slopes.off(
        new Off("mash too warm all through", "mashK", 1, 2),
        with(day, warmer(set)),
        Outcome.ATTENUATION,
        Outcome.ALCOHOL);
    boolean over = set.boilDutyFrac() <= 0.9;
    slopes.off(
        new Off(over ? "boil duty over" : "boil duty under", "dutyFrac", TENTH_FRAC, 0.2),
        with(day, duty(set, set.boilDutyFrac() + (over ? TENTH_FRAC : -TENTH_FRAC))),
        Outcome.FERMENTER,
        Outcome.STRENGTH);
    slopes.off(
        new Off("boiled longer", "boilSec", 300, 1200),
        longer(day, FIVE_MIN_SEC),
        Outcome.FERMENTER,
        Outcome.STRENGTH);
    slopes.off(
        new Off("hops stronger than stated", "alphaFrac", TENTH_FRAC, 0.3),
        with(day, hops(set)),
        Outcome.BITTERNESS);
    return slopes.slopes;
  }

  /// What is off, in words, by how much, and how far its line holds.
  private record Off(String what, String key, double byNumber, double withinNumber) {}

  private void off(Off off, BrewDay changed, Outcome... outcomes) {
    double[] outNumber = Ensemble.nominalOutcomes(changed);
    for (Outcome outcome : outcomes) {
      int i = outcome.ordinal();
      slopes.add(
          new Plan.Slope(
              off.what(),
              off.key(),
              off.byNumber(),
              off.withinNumber(),
              outcome.key(),
              outNumber[i] - planNumber[i]));
    }
  }

  private static BrewDay with(BrewDay day, Settings settings) {
    return new BrewDay(day.recipe(), day.rig(), settings);
  }

  private static Settings warmer(Settings set) {
    return new Settings(
        set.liquorL(),
        set.strikeC() + 1,
        set.mashOffsetK() + 1,
        set.gristFactor(),
        set.hopFactor(),
        set.boilDutyFrac(),
        set.topUpL());
  }

  private static Settings duty(Settings set, double dutyFrac) {
    return new Settings(
        set.liquorL(),
        set.strikeC(),
        set.mashOffsetK(),
        set.gristFactor(),
        set.hopFactor(),
        dutyFrac,
        set.topUpL());
  }

  private static Settings hops(Settings set) {
    return new Settings(
        set.liquorL(),
        set.strikeC(),
        set.mashOffsetK(),
        set.gristFactor(),
        set.hopFactor() * 1.1,
        set.boilDutyFrac(),
        set.topUpL());
  }

  private static BrewDay longer(BrewDay day, double moreSec) {
    Recipe recipe = day.recipe();
    Entered hold = Entered.of(recipe.boil().holdSec().inside() + moreSec, Quantity.TIME.inside());
    Boil boil =
        new Boil(
            hold,
            recipe.boil().evaporationLPerSec(),
            recipe.boil().dutyFrac(),
            recipe.boil().lid());
    return new BrewDay(recipe.withBoil(boil), day.rig(), day.settings());
  }
}
