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

  private final double[] planNumber;
  private final List<Plan.Slope> slopes = new ArrayList<>();

  private Slopes(double[] planNumber) {
    this.planNumber = planNumber;
  }

  static List<Plan.Slope> of(BrewDay day) {
    Slopes slopes = new Slopes(Ensemble.nominalOutcomes(day));
    Settings set = day.settings();
    slopes.off(
        "liquor over by 1 L",
        with(day, set.withLiquor(set.liquorL() + 1, set.topUpL())),
        "up to 3 L",
        Outcome.STRENGTH,
        Outcome.FERMENTER);
    slopes.off(
        "mash 1 C too warm all through",
        with(day, warmer(set)),
        "up to 2 C",
        Outcome.ATTENUATION,
        Outcome.ALCOHOL);
    double more = set.boilDutyFrac() <= 0.9 ? 0.1 : -0.1;
    slopes.off(
        more > 0 ? "boil duty over by 10 points" : "boil duty under by 10 points",
        with(day, duty(set, set.boilDutyFrac() + more)),
        "up to 20 points",
        Outcome.FERMENTER,
        Outcome.STRENGTH);
    slopes.off(
        "boil longer by 5 min",
        longer(day, FIVE_MIN_SEC),
        "up to 20 min",
        Outcome.FERMENTER,
        Outcome.STRENGTH);
    slopes.off(
        "hops a tenth stronger than the packet says",
        with(day, hops(set)),
        "up to a third",
        Outcome.BITTERNESS);
    return slopes.slopes;
  }

  private void off(String off, BrewDay changed, String within, Outcome... outcomes) {
    double[] outNumber = Ensemble.nominalOutcomes(changed);
    for (Outcome outcome : outcomes) {
      int i = outcome.ordinal();
      slopes.add(new Plan.Slope(off, outcome.key(), outNumber[i] - planNumber[i], within));
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
    Boil boil = new Boil(hold, recipe.boil().evaporationLPerSec(), recipe.boil().dutyFrac());
    return new BrewDay(recipe.withBoil(boil), day.rig(), day.settings());
  }
}
