package gylebook.plan;

import gylebook.recipe.Aim;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Outcome;
import gylebook.simulate.Settings;
import gylebook.units.Entered;
import java.util.Optional;

/// Finds the settings that bring the middle of the days to come to the wanted beer.
///
/// What it simulates is the day without luck, again and again; the [Lean] of the days against that
/// one is added to what comes out of it.
///
/// Each setting mostly moves one figure: liquor the litres, strike the temperature after dough-in,
/// the set point what the grain holds, the grist the strength, the hops the bitterness, the duty
/// the evaporation. So every round corrects each by its own miss, with the slope that the balance
/// gives; the small cross effects are gone after a few rounds.
final class Solver {
  private static final int MOST_ROUNDS = 40;
  private static final double NEAR_RATIO = 2e-4;
  private static final double NEAR_K = 0.02;
  private static final double KEPT_L_PER_KG = 0.7;
  private static final double SEC_PER_HR = 3600;
  private static final double LATENT_J_PER_L = 2.26e6;

  /// A rolling boil at home drives off 8 to 15 % in the hour (common practice, no source).
  private static final double USUAL_BOIL_OFF_PER_HR = 0.10;

  private final Recipe recipe;
  private final Rig rig;
  private final double lengthL;
  private final double topUpL;
  private final Lean lean;
  private Settings settings;
  private Outcomes out;

  Solver(Recipe recipe, Rig rig, double lengthL, double topUpL, Lean lean) {
    this(recipe, rig, lengthL, topUpL, lean, Optional.empty());
  }

  /// @param start settings that may be near; else a guess is made
  Solver(
      Recipe recipe, Rig rig, double lengthL, double topUpL, Lean lean, Optional<Settings> start) {
    this.recipe = recipe;
    this.rig = rig;
    this.lengthL = lengthL;
    this.topUpL = topUpL;
    this.lean = lean;
    this.settings =
        start.map(near -> near.withLiquor(near.liquorL(), topUpL)).orElseGet(this::firstGuess);
    this.out = Outcomes.of(new BrewDay(recipe, rig, settings));
  }

  /// What was found.
  ///
  /// @param day with the settings
  /// @param out what comes out
  /// @param met whether every aim was met
  record Found(BrewDay day, Outcomes out, boolean met) {}

  private Settings firstGuess() {
    double grainKg = recipe.grist().stream().mapToDouble(line -> line.massKg().inside()).sum();
    double liquorL = Math.max(2, 1.2 * lengthL + KEPT_L_PER_KG * grainKg + 1 - topUpL);
    double firstC = firstRestC();
    double strikeC = firstC + 4;
    double dutyFrac = recipe.boil().dutyFrac().map(Entered::inside).orElse(0.7);
    return new Settings(liquorL, strikeC, 0.3, 1, 1, dutyFrac, topUpL);
  }

  private double firstRestC() {
    return recipe.rests().isEmpty() ? 66 : recipe.rests().getFirst().targetC().inside();
  }

  /// Corrects until nothing moves any more.
  Found found() {
    boolean met = false;
    for (int round = 0; round < MOST_ROUNDS && !met; round++) {
      out = Outcomes.of(new BrewDay(recipe, rig, settings));
      Settings better = better();
      met = near(settings, better);
      if (!met) {
        settings = better;
      }
    }
    return new Found(new BrewDay(recipe, rig, settings), out, met);
  }

  private Settings better() {
    boolean keg = recipe.aim().into() == Aim.Into.KEG;
    double missL = lengthL - lean.middle(out, keg ? Outcome.KEG : Outcome.FERMENTER);
    double liquorL = Math.max(1, settings.liquorL() + missL);
    double strikeC = settings.strikeC() + heldK(firstRestC() - lean.middle(out, Outcome.DOUGH_IN));
    double offsetK =
        settings.mashOffsetK() + heldK(firstRestC() - lean.middle(out, Outcome.GRAIN_HELD));
    return new Settings(
        liquorL,
        Math.clamp(strikeC, 20, 99),
        Math.clamp(offsetK, -3, 8),
        gristFactor(),
        hopFactor(),
        dutyFrac(),
        topUpL);
  }

  private static double heldK(double missK) {
    return Math.clamp(missK, -10, 10);
  }

  private double gristFactor() {
    return recipe
        .aim()
        .strengthPlato()
        .map(
            wanted -> {
              double gotPlato = lean.middle(out, Outcome.STRENGTH);
              double wantedPlato = wanted.inside();
              double odds =
                  wantedPlato / (100 - wantedPlato) * ((100 - gotPlato) / Math.max(0.1, gotPlato));
              return settings.gristFactor() * Math.clamp(odds, 0.3, 3);
            })
        .orElse(1.0);
  }

  private double hopFactor() {
    return recipe
        .aim()
        .bitternessMgPerL()
        .filter(_ -> out.at(Outcome.ISO_IN_BEER) > 0)
        .map(
            wanted -> {
              double missMgPerL = wanted.inside() - lean.middle(out, Outcome.BITTERNESS);
              double ratio = 1 + missMgPerL / out.at(Outcome.ISO_IN_BEER);
              return settings.hopFactor() * Math.clamp(ratio, 0.2, 5);
            })
        .orElse(1.0);
  }

  private double dutyFrac() {
    if (recipe.boil().dutyFrac().isPresent()) {
      return recipe.boil().dutyFrac().get().inside();
    }
    double missLPerHr = wantedLPerHr(recipe, lengthL) - lean.middle(out, Outcome.BOIL_OFF_RATE);
    double missLPerSec = missLPerHr / SEC_PER_HR;
    double powerW = rig.element().plateW().value();
    double dutyFrac = settings.boilDutyFrac() + missLPerSec * LATENT_J_PER_L / powerW;
    return Math.clamp(Math.max(dutyFrac, out.at(Outcome.ROLLING)), 0.05, 1);
  }

  /// Evaporation that the recipe asks for, or what is usual for its length.
  static double wantedLPerHr(Recipe recipe, double lengthL) {
    Optional<Entered> asked = recipe.boil().evaporationLPerSec();
    return asked.map(a -> a.inside() * SEC_PER_HR).orElse(USUAL_BOIL_OFF_PER_HR * lengthL);
  }

  private static boolean near(Settings a, Settings b) {
    return close(a.liquorL() / b.liquorL(), 1)
        && Math.abs(a.strikeC() - b.strikeC()) < NEAR_K
        && Math.abs(a.mashOffsetK() - b.mashOffsetK()) < NEAR_K
        && close(a.gristFactor(), b.gristFactor())
        && close(a.hopFactor(), b.hopFactor())
        && Math.abs(a.boilDutyFrac() - b.boilDutyFrac()) < 2e-3;
  }

  private static boolean close(double aNumber, double bNumber) {
    return Math.abs(aNumber - bNumber) <= NEAR_RATIO * Math.max(1, Math.abs(aNumber));
  }
}
