package gylebook.plan;

import gylebook.recipe.Ferment;
import gylebook.recipe.Hop;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.recipe.Yeast;
import gylebook.science.DryHop;
import gylebook.science.FermentationCurve;
import gylebook.science.Pitching;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// What a recipe's fermenter may go wrong with: too little yeast, no warm rest, dry hops.
@AnyUnit("figures of every quantity; each note names its unit")
final class ColdGuards {
  private static final double SEC_PER_HR = 3600;
  private static final double G_PER_KG = 1000;
  // Cooler than this the trade pitches twice as much (common practice, no source).
  private static final double LAGER_BELOW_C = 15;
  private static final double ALE_COUNT_PER_ML = 0.75e6;
  private static final double LAGER_COUNT_PER_ML = 1.5e6;
  // The best of six dried yeasts, all of it alive but for one in twenty.
  private static final double BEST_COUNT_PER_G = 18e9;
  private static final double BEST_ALIVE_FRAC = 0.95;
  private static final double USUAL_COUNT_PER_G = 10e9;
  private static final double USUAL_ALIVE_FRAC = 0.75;
  // Two days at 18 C or more once nine tenths have fermented (common practice, no source).
  private static final double REST_C = 18;
  private static final double REST_HR = 48;
  private static final double NEARLY_FRAC = 0.1;
  private static final double STEP_HR = 1;
  // As much as hop creep took in forty days at 10 g/L and 20 C.
  private static final double CREEP_PLATO = 2;
  private static final double BEER_KG_PER_L = 1.01;

  private ColdGuards() {}

  static List<Guard> of(Recipe recipe, Ensemble ensemble) {
    List<Guard> found = new ArrayList<>();
    yeast(found, recipe.yeast(), ensemble);
    rest(found, recipe);
    dryHops(found, recipe);
    return found;
  }

  private static void yeast(List<Guard> found, Yeast yeast, Ensemble ensemble) {
    double yeastG = driedG(yeast);
    if (!(yeastG > 0)) {
      return;
    }
    double wortL = Math.max(0, Bands.of(ensemble.outcome(Outcome.FERMENTER)).middle());
    double plato = Math.clamp(Bands.of(ensemble.outcome(Outcome.STRENGTH)).middle(), 0, 40);
    double rate = yeast.pitchC().inside() < LAGER_BELOW_C ? LAGER_COUNT_PER_ML : ALE_COUNT_PER_ML;
    double leastG = Pitching.driedForWortG(wortL, plato, rate, BEST_COUNT_PER_G, BEST_ALIVE_FRAC);
    if (yeastG >= leastG) {
      return;
    }
    double usualG = Pitching.driedForWortG(wortL, plato, rate, USUAL_COUNT_PER_G, USUAL_ALIVE_FRAC);
    found.add(
        new Guard(
            "littleYeast",
            Guard.Level.NOTE,
            List.of(
                Note.of("", "yeastG", yeastG),
                Note.of(
                    " of dried yeast are few, even at their best; by habit this wort gets ",
                    "yeastG",
                    usualG),
                Note.words(".")),
            "Pitch more, or wet it in water of 35 to 41 C first; never in cold water.",
            "cast",
            1,
            "Few cells start late and may stop early; strains and packets differ.",
            ""));
  }

  /// Dried yeast by mass; a packet's mass is not known.
  private static double driedG(Yeast yeast) {
    String form = yeast.form().toLowerCase(Locale.ROOT);
    if (!form.startsWith("dry") && !form.startsWith("dried")) {
      return Double.NaN;
    }
    return switch (yeast.amountNumber().unit().quantity()) {
      case MASS -> G_PER_KG * yeast.amountNumber().inside();
      case SMALL_MASS -> yeast.amountNumber().inside();
      default -> Double.NaN;
    };
  }

  private static void rest(List<Guard> found, Recipe recipe) {
    double restHr = warmRestHr(recipe.ferment().steps());
    if (!(restHr < REST_HR)) {
      return;
    }
    found.add(
        new Guard(
            "shortRest",
            Guard.Level.NOTE,
            List.of(
                Note.of("Once nine tenths have fermented, ", "restSec", SEC_PER_HR * restHr),
                Note.of(" of the ferment's steps stand at ", "restC", REST_C),
                Note.words(" or more; diacetyl wants two days.")),
            "Let it rest two days that warm before it is cooled, and smell a warm forced sample.",
            "cast",
            1,
            "Its precursor splits slowly, and only warmth hurries it; cold beer keeps the butter"
                + " for later.",
            "A closed sample at 60 to 70 C is hot glass under pressure: leave its lid loose."));
  }

  /// How long the steps stand warm after nine tenths have fermented, by the middle of what is
  /// expected of yeast; NaN where there are no steps or it never gets so far.
  private static double warmRestHr(List<Ferment.Step> steps) {
    double tau = 0;
    double restHr = 0;
    boolean nearly = false;
    for (Ferment.Step step : steps) {
      double holdHr = step.holdSec().inside() / SEC_PER_HR;
      double firstC = step.startC().inside();
      double riseK = step.endC().inside() - firstC;
      int count = (int) Math.clamp(Math.ceil(holdHr / STEP_HR), 1, 10_000);
      double partHr = holdHr / count;
      for (int i = 0; i < count; i++) {
        double beerC = firstC + riseK * (i + 0.5) / count;
        if (nearly && beerC >= REST_C) {
          restHr += partHr;
        }
        tau +=
            partHr
                * FermentationCurve.ratePerHr(
                    Math.clamp(beerC, 0, 40),
                    FermentationCurve.RATE_PER_HR,
                    FermentationCurve.Q10_FACTOR);
        nearly =
            FermentationCurve.leftFrac(
                    tau, FermentationCurve.MIDPOINT_NUMBER, FermentationCurve.SKEW_NUMBER)
                < NEARLY_FRAC;
      }
    }
    return nearly ? restHr : Double.NaN;
  }

  private static void dryHops(List<Guard> found, Recipe recipe) {
    boolean dry =
        recipe.hops().stream()
            .anyMatch(hop -> hop.when() instanceof Hop.When.Dry && hop.massG().inside() > 0);
    if (!dry) {
      return;
    }
    double creepVol = DryHop.creep(CREEP_PLATO, BEER_KG_PER_L).gasVol();
    found.add(
        new Guard(
            "dryHopsStartAgain",
            recipe.pack().kind() == Pack.Kind.KEG ? Guard.Level.NOTE : Guard.Level.SOON,
            List.of(
                Note.of("Dry hops may start the beer again; as much gas as ", "creepVol", creepVol),
                Note.words(" was seen.")),
            "After them count it as unfinished: two equal gravities two days apart and a clean"
                + " diacetyl test, then package. One to three days of contact are enough.",
            "cast",
            1,
            "Hops carry enzymes that cut what yeast could not eat (Kirkpatrick and Shellhammer"
                + " 2018: 10 g/L at 20 C, forty days).",
            "Bottles that ferment on burst: never fill glass with live beer, read the package's own"
                + " marking, wear eye protection. Follow your local code."));
  }
}
